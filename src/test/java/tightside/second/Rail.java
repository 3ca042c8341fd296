package tightside.second;

/**
 * The pitch line over a face. The angle at the middle point between the two ends says how far the
 * face turns: half of it is what that angle lacks of a straight one (the inscribed angle, Euclid
 * III.20 to 22).
 */
final class Rail implements Shape {

  private static final double STRAIGHT_MM = 0.01;

  private final Spot start;
  private final Spot end;
  private final int side;
  private final double standOff;
  private final double pitch;
  private final double chord;
  private final double heading;

  /** Half of the angle through which the face turns, radians; 0 where it is straight. */
  private final double half;

  /** Of the pitch line, mm. */
  private final double radius;

  private final Spot centre;

  Rail(Plan.Rub rub, double plate, double pitch, int side) {
    this.start = rub.start();
    this.end = rub.end();
    this.side = side;
    this.standOff = plate / 2;
    this.pitch = pitch;
    Spot run = end.minus(start);
    chord = run.size();
    heading = run.direction();
    Spot out = Spot.towards(heading).leftTurned();
    double bulge = side * rub.middle().minus(start).along(out);
    if (bulge < -STRAIGHT_MM) {
      throw new IllegalArgumentException("a face bulges away from its chain");
    }
    Spot back = start.minus(rub.middle());
    Spot on = end.minus(rub.middle());
    half = bulge <= STRAIGHT_MM ? 0 : Math.PI - Math.acos(back.along(on) / back.size() / on.size());
    double faceRadius = chord / (2 * Math.sin(half));
    radius = faceRadius + standOff;
    centre = half == 0 ? start : midst().plus(out, -side * faceRadius * Math.cos(half));
  }

  @Override
  public int side() {
    return side;
  }

  /** The direction of the pitch line a part of the way along the face. */
  double directionAt(double part) {
    return heading + side * half * (1 - 2 * part);
  }

  /** How far a chain travelling in this direction has turned past the direction of the chord. */
  private double past(double direction) {
    return Shape.near(side * (heading - direction));
  }

  @Override
  public Spot touch(double direction) {
    Spot out = Spot.towards(direction).leftTurned();
    double past = past(direction);
    return Math.abs(past) < half
        ? centre.plus(out, side * radius)
        : (past < 0 ? start : end).plus(out, side * standOff);
  }

  @Override
  public double pitches(double arriving, double leaving) {
    double from = past(arriving);
    double to = past(leaving);
    double ofFace = Math.max(0, Math.min(to, half) - Math.max(from, -half));
    double ofEnds = to - from - ofFace;
    return ofEnds * standOff / pitch + faceMeasure(from, to, ofFace);
  }

  private double faceMeasure(double from, double to, double ofFace) {
    if (half == 0) {
      return from < 0 && to > 0 ? chord / pitch : 0;
    }
    return ofFace == 0 ? 0 : ofFace / (2 * Math.asin(pitch / 2 / radius));
  }

  @Override
  public Spot midst() {
    return start.plus(end.minus(start), 0.5);
  }
}
