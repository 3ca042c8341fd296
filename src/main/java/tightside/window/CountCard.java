package tightside.window;

import tightside.session.SessionView;

final class CountCard extends Card {
  CountCard(Desk desk) {}

  @Override
  void layOut(SessionView view) {}

  @Override
  void fill(SessionView view) {}
}
