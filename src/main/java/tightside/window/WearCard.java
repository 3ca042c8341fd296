package tightside.window;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;
import tightside.session.SessionView;

/** The card on which chains are worn, measured, and their plungers read. */
final class WearCard extends Card {

  private final Desk desk;
  private final List<ChainWear> chains = new ArrayList<>();

  WearCard(Desk desk) {
    this.desk = desk;
  }

  @Override
  void layOut(SessionView view) {
    chains.clear();
    getChildren().setAll(Controls.label("How far is the chain worn?", "card-title"));
    for (Chain chain : view.snapshot().drive().chains()) {
      ChainWear wear = new ChainWear(desk, chain, this::showing);
      chains.add(wear);
      getChildren().add(wear);
    }
    getChildren()
        .add(
            Controls.label(
                "Stretch is a mean: wear grows every second pitch. A plunger read by its steps is"
                    + " good to about one step. Worn faces and a warm block read otherwise than a"
                    + " worn chain. Limits of wear are the maker's.",
                "note"));
  }

  @Override
  void fill(SessionView view) {
    chains.forEach(chain -> chain.show(view));
  }
}
