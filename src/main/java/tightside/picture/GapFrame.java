package tightside.picture;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * How crank angles and room lie in a chart: angles to the right, room upwards.
 *
 * @param plot the rectangle of the curves, mm of the picture
 * @param reachDegrees it runs from minus to plus this, crank degrees from top dead centre
 * @param leastMm room at its bottom, nothing or negative
 * @param mostMm room at its top
 */
record GapFrame(Bounds plot, double reachDegrees, double leastMm, double mostMm) {

  double x(double degrees) {
    return plot.left() + plot.width() * (degrees + reachDegrees) / (2 * reachDegrees);
  }

  double y(double roomMm) {
    return plot.bottom() + plot.height() * (roomMm - leastMm) / (mostMm - leastMm);
  }

  Vector2D at(double degrees, double roomMm) {
    return Vector2D.of(x(degrees), y(roomMm));
  }

  boolean shows(double degrees) {
    return Math.abs(degrees) <= reachDegrees;
  }
}
