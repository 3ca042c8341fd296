package tightside.second;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** A face with its plunger out. */
final class Pushed {

  private Pushed() {}

  static Plan.Rub by(Plan.Rub rub, double extension) {
    return rub.push().map(push -> moved(rub, mover(push, extension))).orElse(rub);
  }

  private static Plan.Rub moved(Plan.Rub rub, UnaryOperator<Spot> mover) {
    return new Plan.Rub(
        mover.apply(rub.start()),
        mover.apply(rub.middle()),
        mover.apply(rub.end()),
        rub.outside(),
        rub.push());
  }

  private static UnaryOperator<Spot> mover(Plan.Push push, double extension) {
    Spot way = Spot.bearing(push.bearing());
    Optional<Plan.Arm> arm = push.arm();
    if (arm.isEmpty()) {
      return spot -> spot.plus(way, extension);
    }
    Spot pivot = arm.get().pivot();
    double turn = turn(arm.get(), way, extension);
    return spot -> spot.turned(pivot, turn);
  }

  /** The turn, counterclockwise, that carries the pad so far along the plunger's way. */
  private static double turn(Plan.Arm arm, Spot way, double extension) {
    Spot reach = arm.pad().minus(arm.pivot());
    int sense = reach.leftTurned().along(way) > 0 ? 1 : -1;
    double farthest = Math.abs(Shape.near(way.direction() - reach.direction()));
    return sense
        * Fit.bisect(
            turn ->
                arm.pad().turned(arm.pivot(), sense * turn).minus(arm.pad()).along(way) - extension,
            0,
            farthest);
  }
}
