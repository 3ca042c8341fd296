package tightside.geometry;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The straight run of a string from one oriented circle to the next.
 *
 * @param from the point where it leaves the first circle, mm
 * @param to the point where it meets the second, mm
 * @param heading its direction of travel
 * @param lengthMm zero or more
 */
public record Tangent(Vector2D from, Vector2D to, Bearing heading, double lengthMm) {

  /**
   * The one tangent formula. With D from centre to centre, d its length, and k = rho1 - rho2 the
   * difference of the signed radii, the run has length L = sqrt(d^2 - k^2) and direction u = (L D -
   * k D') / d^2, D' being D turned 90 degrees to the left. Open and crossed runs differ in the
   * signs of the radii alone.
   *
   * @return nothing where the circles leave no such line: one inside the other (same sense), or
   *     overlapping (opposite senses)
   */
  public static Optional<Tangent> between(OrientedCircle first, OrientedCircle second) {
    Vector2D apart = first.centre().vectorTo(second.centre());
    double squared = apart.normSq();
    double difference = first.signedRadiusMm() - second.signedRadiusMm();
    double rest = squared - difference * difference;
    if (rest < 0 || squared == 0) {
      return Optional.empty();
    }
    double length = Math.sqrt(rest);
    Vector2D direction =
        Vector2D.Sum.create()
            .addScaled(length / squared, apart)
            .addScaled(-difference / squared, OrientedCircle.left(apart))
            .get();
    Vector2D left = OrientedCircle.left(direction);
    return Optional.of(
        new Tangent(
            Vector2D.Sum.of(first.centre()).addScaled(first.signedRadiusMm(), left).get(),
            Vector2D.Sum.of(second.centre()).addScaled(second.signedRadiusMm(), left).get(),
            Bearing.of(direction),
            length));
  }
}
