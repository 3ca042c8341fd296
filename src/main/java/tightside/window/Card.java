package tightside.window;

import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tightside.drive.Drive;
import tightside.session.SessionView;

/** A card on the bench. It is laid out once for a drive; after that only what it shows changes. */
abstract class Card extends VBox {

  private Drive known;
  private boolean showing;

  Card() {
    getStyleClass().add("card");
  }

  /** Makes the controls for a drive. */
  abstract void layOut(SessionView view);

  /** Shows a view in the controls that are there. */
  abstract void fill(SessionView view);

  /**
   * What a card shows large, left of the bench.
   *
   * @param besidePicture whether the drive stays in sight, half as wide
   */
  record Stage(Region region, boolean besidePicture) {}

  /** What this card shows large; none where the drive has all the room. */
  Optional<Stage> stage() {
    return Optional.empty();
  }

  /** A person has turned to this card. */
  void turned() {}

  final void show(SessionView view) {
    showing = true;
    if (known != view.snapshot().drive()) {
      known = view.snapshot().drive();
      layOut(view);
    }
    fill(view);
    showing = false;
  }

  /** Whether a change of a control is the card's own, and no event. */
  final boolean showing() {
    return showing;
  }
}
