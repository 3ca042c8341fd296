package tightside.second;

/** A point or a displacement, mm; x to the right, y up. */
public record Spot(double x, double y) {

  /** One step in a direction, radians counterclockwise from x. */
  static Spot towards(double direction) {
    return new Spot(Math.cos(direction), Math.sin(direction));
  }

  /** One step in a bearing, degrees clockwise from straight up. */
  static Spot bearing(double degrees) {
    return towards(Math.toRadians(90 - degrees));
  }

  Spot plus(Spot other, double times) {
    return new Spot(x + times * other.x, y + times * other.y);
  }

  Spot minus(Spot other) {
    return plus(other, -1);
  }

  double along(Spot other) {
    return x * other.x + y * other.y;
  }

  double size() {
    return Math.hypot(x, y);
  }

  double direction() {
    return Math.atan2(y, x);
  }

  Spot leftTurned() {
    return new Spot(-y, x);
  }

  /** Turned counterclockwise round a point. */
  Spot turned(Spot round, double radians) {
    Spot arm = minus(round);
    return round.plus(Spot.towards(radians), arm.x).plus(Spot.towards(radians).leftTurned(), arm.y);
  }
}
