package tightside.readings;

import java.util.Optional;
import tightside.drive.Seen;
import tightside.drive.Sprocket;

/** Turning the engine two turns forward and looking at a shaft's mark again. */
public record TwoTurnsAgain(String chain, String shaft) implements Check {

  /** A mark beside an edge is read to this, camshaft degrees; from memory. */
  public static final double READ_DEGREES = 3;

  @Override
  public Kind kind() {
    return Kind.TWO_TURNS;
  }

  @Override
  public Seen access(Situation situation) {
    return situation
        .drive()
        .chain(chain)
        .flatMap(c -> c.sprocketOn(shaft))
        .map(Sprocket::seen)
        .orElse(Seen.NEVER);
  }

  @Override
  public Optional<Shown> shows(Situation situation, Moment moment) {
    return moment == Moment.BEFORE_TURNING
        ? Optional.empty()
        : situation
            .turned()
            .shaft(shaft)
            .map(t -> new Shown(t.shaftDegrees(), Shown.Unit.SHAFT_DEGREES));
  }

  @Override
  public double noticeable(Situation right, Shown reading) {
    return READ_DEGREES;
  }
}
