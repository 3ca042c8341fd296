package tightside.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.picture.Ink;
import tightside.picture.Plane;
import tightside.picture.Stencil;
import tightside.picture.Styles;

/** What is kept of stencils, and for how long. */
class CutsTest {

  private static final Brushes.Brush BRUSH =
      Brushes.Brush.of(Styles.of(Ink.INNER_PLATE, Plane.FRONT), 1);

  private static Stencil half(double radius) {
    Curve arc = new Curve.Arc(Vector2D.ZERO, radius, new Bearing(0), 180);
    return new Stencil(List.of(arc), true);
  }

  @Test
  void aStencilIsCutOnceForAScaleAndStampedFromItsSecondFrameOn() {
    Cuts cuts = new Cuts();
    cuts.begin(2);
    Cut first = cuts.of(half(3), BRUSH);
    assertThat(cuts.room(first)).isFalse();
    cuts.begin(2);
    assertThat(cuts.of(half(3), BRUSH)).isSameAs(first);
    assertThat(cuts.room(first)).isTrue();
    cuts.begin(2.1);
    Cut larger = cuts.of(half(3), BRUSH);
    assertThat(larger.reach()).isGreaterThan(first.reach());
    assertThat(cuts.room(larger)).isFalse();
  }

  @Test
  void whatIsDrawnOutMoreAndMoreIsNotKeptForEver() {
    Cuts cuts = new Cuts();
    cuts.begin(1);
    Cut first = cuts.of(half(3), BRUSH);
    for (int i = 1; i <= 200; i++) {
      cuts.begin(1);
      cuts.of(half(3 + 0.001 * i), BRUSH);
    }
    assertThat(cuts.of(half(3), BRUSH)).isNotSameAs(first);
  }

  @Test
  void fullRoomIsClearedForTheNextFrame() {
    Cuts cuts = new Cuts(100);
    cuts.begin(1);
    Cut first = cuts.of(half(3), BRUSH);
    cuts.begin(1);
    cuts.kept(new Stamp(0, 0, 10, 10, new int[100]));
    assertThat(cuts.room(first)).isFalse();
    cuts.begin(1);
    Cut again = cuts.of(half(3), BRUSH);
    cuts.begin(1);
    assertThat(cuts.room(again)).isTrue();
  }
}
