package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import tightside.drive.Part;

/** Labels stand by what they name, on a drive 200 mm wide with words 2 mm high. */
class LabelPlacerTest {

  private static final Tag TAG = new Tag(Ink.LABEL, Part.shaft("cam"), Plane.FRONT);
  private static final double EM = 2;

  private final Draft draft = new Draft();

  private Shape.Text written(Bounds taken) {
    draft.circle(TAG, Vector2D.ZERO, 100);
    LabelPlacer placer = new LabelPlacer(draft, EM);
    placer.reserve(taken);
    Label.Spot above = new Label.Spot(Vector2D.ZERO, Vector2D.of(0, 1), 0, 5);
    placer.place(new Label(TAG, TAG, List.of("cam"), List.of(above)));
    return draft.shapes().stream()
        .filter(Shape.Text.class::isInstance)
        .map(Shape.Text.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLabelStandsWhereItWouldBestBe() {
    Vector2D middle = written(Bounds.around(Vector2D.of(50, 0), 3, 3)).bounds().centre();
    assertThat(middle.getX()).isBetween(-1.0, 1.0);
    assertThat(middle.getY()).isBetween(5.0, 9.0);
  }

  @Test
  void whereThatIsTakenItGoesAsideRatherThanOutOfTheDrive() {
    Bounds taken = Bounds.around(Vector2D.of(0, 7), 3, 3);
    Bounds text = written(taken).bounds();
    assertThat(text.overlaps(taken)).isFalse();
    assertThat(text.centre().norm()).isLessThan(15);
  }
}
