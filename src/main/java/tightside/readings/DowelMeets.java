package tightside.readings;

import java.util.Optional;
import tightside.drive.Joint;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.timing.DowelRule;

/** Watching how far a locked camshaft has to be turned for its dowel or key to meet. */
public record DowelMeets(String chain, String shaft) implements Check {
  @Override
  public Kind kind() {
    return Kind.DOWEL;
  }

  @Override
  public Seen access(Situation situation) {
    return situation
        .drive()
        .chain(chain)
        .flatMap(c -> c.sprocketOn(shaft))
        .filter(s -> s.joint() != Joint.FRICTION)
        .map(Sprocket::seen)
        .orElse(Seen.NEVER);
  }

  @Override
  public Optional<Shown> shows(Situation situation, Moment moment) {
    return moment == Moment.BEFORE_TURNING && situation.held(chain).isPresent()
        ? Optional.of(new Shown(situation.turnedForLay(shaft), Shown.Unit.SHAFT_DEGREES))
        : Optional.empty();
  }

  /** By the rule of the dowel: what slack and play excuse is not noticed. */
  @Override
  public double noticeable(Situation right, Shown reading) {
    return right.held(chain).stream()
        .map(hold -> DowelRule.of(hold, shaft))
        .mapToDouble(DowelRule::limitDegrees)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
