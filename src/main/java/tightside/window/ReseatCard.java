package tightside.window;

import tightside.session.SessionView;

final class ReseatCard extends Card {
  ReseatCard(Desk desk) {}

  @Override
  void layOut(SessionView view) {}

  @Override
  void fill(SessionView view) {}
}
