package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;

/**
 * Outlines of link plates. Each lies with its middle at the origin and its two pins on the y axis,
 * which points the way the chain travels; x is to the right of travel.
 */
final class Plates {

  /** Half of a waist, as a fraction of its height. */
  private static final double WAIST = 0.32;

  private Plates() {}

  /** A plate with straight sides. */
  static List<Curve> straight(double pitchMm, double heightMm) {
    return tapered(pitchMm, heightMm / 2, heightMm / 2);
  }

  /** A plate wider at the pin ahead than at the one behind. */
  static List<Curve> tapered(double pitchMm, double aheadMm, double behindMm) {
    double half = pitchMm / 2;
    return List.of(
        new Curve.Arc(Vector2D.of(0, half), aheadMm, new Bearing(270), 180),
        new Curve.Line(Vector2D.of(aheadMm, half), Vector2D.of(behindMm, -half)),
        new Curve.Arc(Vector2D.of(0, -half), behindMm, new Bearing(90), 180),
        new Curve.Line(Vector2D.of(-behindMm, -half), Vector2D.of(-aheadMm, half)));
  }

  /**
   * A plate with a waist: two round ends of radius r, and between them arcs of radius w that touch
   * both and leave a half-waist of q. With the pins 2a apart, (q + w)^2 + a^2 = (r + w)^2, so w =
   * (a^2 + q^2 - r^2) / 2(r - q). A plate too high for its pitch has no waist.
   */
  static List<Curve> waisted(double pitchMm, double heightMm) {
    double a = pitchMm / 2;
    double r = heightMm / 2;
    double q = WAIST * heightMm;
    double w = (a * a + q * q - r * r) / (2 * (r - q));
    if (w < r / 4) {
      return straight(pitchMm, heightMm);
    }
    double beta = Bearing.of(Vector2D.of(q + w, -a)).degrees();
    return List.of(
        new Curve.Arc(Vector2D.of(0, a), r, new Bearing(-beta), 2 * beta),
        new Curve.Arc(Vector2D.of(q + w, 0), w, new Bearing(beta + 180), 180 - 2 * beta),
        new Curve.Arc(Vector2D.of(0, -a), r, new Bearing(180 - beta), 2 * beta),
        new Curve.Arc(Vector2D.of(-q - w, 0), w, new Bearing(beta), 180 - 2 * beta));
  }

  /**
   * Three slanted stripes across the middle of a plate.
   *
   * @param asideMm how far they lie to the right of the line of the pins
   * @param halfMm half of their length
   */
  static List<Curve> stripes(double pitchMm, double asideMm, double halfMm) {
    List<Curve> stripes = new ArrayList<>();
    for (int stripe = -1; stripe <= 1; stripe++) {
      double y = stripe * 0.13 * pitchMm;
      double slant = 0.06 * pitchMm;
      stripes.add(
          new Curve.Line(
              Vector2D.of(asideMm - halfMm, y - slant), Vector2D.of(asideMm + halfMm, y + slant)));
    }
    return stripes;
  }

  /**
   * The plate of a toothed chain: a flat back and two claws, the right one of which lies at the pin
   * ahead. Drawn only; no standard's form.
   *
   * @param claws the side on which the claws are: 1 to the right of travel, -1 to the left
   */
  static List<Curve> toothed(double pitchMm, double heightMm, int claws) {
    double a = pitchMm / 2;
    double h = claws * heightMm / 2;
    double p = pitchMm;
    double[][] ahead = {
      {0.12 * h, 0},
      {0.95 * h, a - 0.06 * p},
      {h, a + 0.08 * p},
      {0, a + 0.33 * p},
      {-0.7 * h, a + 0.33 * p},
      {-h, a + 0.12 * p}
    };
    Vector2D[] corners = new Vector2D[2 * ahead.length - 1];
    for (int i = 0; i < ahead.length; i++) {
      corners[i] = Vector2D.of(ahead[i][0], ahead[i][1]);
      if (i > 0) {
        corners[corners.length - i] = Vector2D.of(ahead[i][0], -ahead[i][1]);
      }
    }
    Curve[] sides = new Curve[corners.length];
    for (int i = 0; i < corners.length; i++) {
      sides[i] = new Curve.Line(corners[i], corners[(i + 1) % corners.length]);
    }
    return List.of(sides);
  }
}
