package tightside.window;

import tightside.session.SessionView;

final class TableCard extends Card {
  TableCard() {}

  @Override
  void layOut(SessionView view) {}

  @Override
  void fill(SessionView view) {}
}
