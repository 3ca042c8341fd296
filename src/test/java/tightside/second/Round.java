package tightside.second;

/** The pitch circle of a sprocket. */
record Round(Spot at, int teeth, double radius, int side) implements Shape {

  static Round of(Plan.Wheel wheel, double pitch, int side) {
    return new Round(
        wheel.at(), wheel.teeth(), pitch / (2 * Math.sin(Math.PI / wheel.teeth())), side);
  }

  @Override
  public Spot touch(double direction) {
    return at.plus(Spot.towards(direction).leftTurned(), side * radius);
  }

  /** From no turn to nearly a full one: a sprocket may be wrapped by more than half. */
  @Override
  public double turn(double arriving, double leaving) {
    double turn = Shape.super.turn(arriving, leaving);
    return turn < 0 ? turn + 2 * Math.PI : turn;
  }

  @Override
  public double pitches(double arriving, double leaving) {
    return turn(arriving, leaving) * teeth / (2 * Math.PI);
  }

  /** The direction of travel where the chain rests on the tooth at a bearing. */
  double directionAt(double bearing) {
    return Math.toRadians(90 - bearing) - side * Math.PI / 2;
  }

  @Override
  public Spot midst() {
    return at;
  }
}
