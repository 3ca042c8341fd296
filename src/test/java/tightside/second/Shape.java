package tightside.second;

/**
 * What the pitch line can rest on.
 *
 * <p>Directions are those of travel, radians counterclockwise from x. The side is +1 where the
 * shape lies on the right of the passing chain, so that the chain turns clockwise round it, and -1
 * where it lies on the left.
 */
public interface Shape {

  int side();

  /** Where a chain that travels in this direction would rest. */
  Spot touch(double direction);

  /** Chain pitches on the shape between two directions of travel. */
  double pitches(double arriving, double leaving);

  /** Some point in the midst of it. */
  Spot midst();

  /** An angle brought to between -pi and pi. */
  static double near(double angle) {
    return angle - 2 * Math.PI * Math.rint(angle / (2 * Math.PI));
  }

  /** How far the chain turns round the shape, between -pi and pi. */
  default double turn(double arriving, double leaving) {
    return near(side() * (arriving - leaving));
  }
}
