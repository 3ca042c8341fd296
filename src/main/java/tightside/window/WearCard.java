package tightside.window;

import tightside.session.SessionView;

final class WearCard extends Card {
  WearCard(Desk desk) {}

  @Override
  void layOut(SessionView view) {}

  @Override
  void fill(SessionView view) {}
}
