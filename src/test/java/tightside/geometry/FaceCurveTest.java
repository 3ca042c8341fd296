package tightside.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FaceCurveTest {

  /** The model format has a face straight up to and with 0.01 mm, wherever its plunger stands. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, -0.01})
  void aFaceJustStraightStaysSoAsItIsMoved(double asideMm) {
    FaceCurve face =
        new FaceCurve(Vector2D.of(0, 60), Vector2D.of(asideMm, 110), Vector2D.of(0, 160));
    assertThat(face.straight()).isTrue();
    for (int step = 0; step <= 400; step++) {
      Vector2D moved = Vector2D.of(0.1 * step, -0.0023 * step);
      assertThat(face.moved(point -> point.add(moved)).straight()).as("moved by " + moved).isTrue();
    }
  }
}
