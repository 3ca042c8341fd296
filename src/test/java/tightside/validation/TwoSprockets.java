package tightside.validation;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;

/**
 * A chain on two sprockets, laid by the program, and what handbooks say of it.
 *
 * @param z1 teeth of the driving sprocket
 */
public record TwoSprockets(int z1, int z2, double pitchMm, double centreMm) {

  /** From the columns z1, z2, pitch and centre, in the row's unit. */
  public static TwoSprockets of(Row row, String centreColumn) {
    return new TwoSprockets(
        row.whole("z1"),
        row.whole("z2"),
        row.number("pitch") * row.unitMm(),
        row.number(centreColumn) * row.unitMm());
  }

  public TwoSprockets swapped() {
    return new TwoSprockets(z2, z1, pitchMm, centreMm);
  }

  /** The program's path. The line of centres lies askew, so that no axis favours it. */
  public TautPath path() {
    Vector2D crank = Vector2D.of(3, -7);
    Vector2D other = Vector2D.Sum.of(crank).addScaled(centreMm, new Bearing(37).direction()).get();
    Route route =
        new Route(
            List.of(
                new Route.Wheel(z1, Rotation.CLOCKWISE, crank),
                new Route.Wheel(z2, Rotation.CLOCKWISE, other)));
    return route.chain(pitchMm);
  }

  /** Centre distance in pitches. */
  public double centrePitches() {
    return centreMm / pitchMm;
  }

  /** X = 2a/p + (z1 + z2)/2 + ((z2 - z1)/2pi)^2 p/a (Shigley, eq. 17-34). */
  public double formulaPitches() {
    double c = centrePitches();
    double d = (z2 - z1) / (2 * Math.PI);
    return 2 * c + (z1 + z2) / 2.0 + d * d / c;
  }

  /**
   * X = 2 (a/p) cos(alpha) + (z1 + z2)/2 + alpha (z2 - z1)/180, sin(alpha) = (D2 - D1)/2a: exact
   * where arcs count in teeth (a machine design data handbook, eq. 14.22(k)).
   */
  public double exactPitches() {
    double alpha = Math.asin(radiusDifference() / centrePitches());
    return 2 * centrePitches() * Math.cos(alpha)
        + (z1 + z2) / 2.0
        + Math.toDegrees(alpha) * (z2 - z1) / 180;
  }

  /** The same path with its arcs along the pitch circles, as a belt would lie, mm. */
  public double exactCircleMm() {
    double difference = radiusDifference() * pitchMm;
    double alpha = Math.asin(difference / centreMm);
    double sum = pitchMm * (radius(z1) + radius(z2));
    return 2 * centreMm * Math.cos(alpha) + Math.PI * sum + 2 * alpha * difference;
  }

  private double radiusDifference() {
    return radius(z2) - radius(z1);
  }

  private static double radius(int teeth) {
    return 0.5 / Math.sin(Math.PI / teeth);
  }

  /** The most by which the true length exceeds the formula's, pitches: see {@link Series}. */
  public double formulaShortByAtMost() {
    return Series.mostLeftOut(centrePitches(), (z2 - z1) / (2 * Math.PI));
  }

  /**
   * The most by which the formula can exceed the true length, pitches. The formula takes z p / 2pi
   * for a pitch radius; a true one is larger, the smaller sprocket's by more, so that the radii
   * differ by e less than teeth say. The length has its greatest value where radii and teeth agree
   * (its slope there is 0, 2e / (a cos(alpha)) beside it), so that it loses at most e^2 / (a
   * cos(alpha)).
   */
  public double formulaLongByAtMost() {
    double teeth = Math.abs(z2 - z1) / (2 * Math.PI);
    double e = teeth - Math.abs(radiusDifference());
    double c = centrePitches();
    return e * e / (c * Math.sqrt(1 - Math.pow(teeth / c, 2)));
  }

  /**
   * The most by which the true length exceeds that of the formula that takes pitch radii instead of
   * teeth, (z1 + z2)/2 + 2m + [cosec(180/z2) - cosec(180/z1)]^2 / 4m with m = a/p (Khurmi and
   * Gupta), pitches: to the rest of the series comes alpha times twice the e of {@link
   * #formulaLongByAtMost()}. It can't exceed the true length.
   */
  public double radiiFormulaShortByAtMost() {
    double radii = Math.abs(radiusDifference());
    double e = Math.abs(z2 - z1) / (2 * Math.PI) - radii;
    return Series.mostLeftOut(centrePitches(), radii) + 2 * e * Math.asin(radii / centrePitches());
  }
}
