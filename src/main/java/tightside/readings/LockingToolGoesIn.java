package tightside.readings;

import java.util.Optional;
import tightside.drive.Seen;
import tightside.timing.ShaftTiming;

/** Trying whether a shaft's locking tool goes in. */
public record LockingToolGoesIn(String shaft) implements Check {

  /** What a tool of unknown play lets pass, camshaft degrees; from memory. */
  public static final double PASSES_DEGREES = 0.5;

  @Override
  public Kind kind() {
    return Kind.LOCKING_TOOL;
  }

  /** Camshafts are locked at their other end or by their flats, the crankshaft at the flywheel. */
  @Override
  public Seen access(Situation situation) {
    return Seen.COVER_ON;
  }

  @Override
  public Optional<Shown> shows(Situation situation, Moment moment) {
    double degrees =
        moment == Moment.BEFORE_TURNING
            ? situation.turnedForLay(shaft)
            : situation.turned().shaft(shaft).map(ShaftTiming::shaftDegrees).orElse(0.0);
    return Optional.of(new Shown(degrees, Shown.Unit.SHAFT_DEGREES));
  }

  @Override
  public double noticeable(Situation right, Shown reading) {
    double camshaft = right.bench().play().camshaftDegrees().orElse(PASSES_DEGREES);
    boolean crank = right.drive().crankshaft().name().equals(shaft);
    return crank ? 2 * camshaft : camshaft;
  }
}
