package tightside.readings;

import java.util.Optional;
import tightside.drive.Seen;
import tightside.timing.HoldBack;
import tightside.timing.LooseStrand;
import tightside.timing.Strand;

/** Pressing a tight strand with a thumb. */
public record SagByThumb(String chain, String from, String to) implements Check {

  /** Less than this is felt in every chain, mm; from memory. */
  public static final double FELT_MM = 3;

  @Override
  public Kind kind() {
    return Kind.THUMB;
  }

  /** What only a borescope reaches can't be pressed. */
  @Override
  public Seen access(Situation situation) {
    Seen seen = situation.strand(chain, from, to).map(Strand::seen).orElse(Seen.NEVER);
    return seen == Seen.BORESCOPE ? Seen.NEVER : seen;
  }

  @Override
  public Optional<Shown> shows(Situation situation, Moment moment) {
    Optional<Strand> tight = situation.strand(chain, from, to).filter(Strand::taut);
    if (tight.isEmpty() || situation.held(chain).isEmpty()) {
      return Optional.empty();
    }
    if (moment == Moment.AFTER_TURNING) {
      return Optional.of(new Shown(0, Shown.Unit.MM));
    }
    return situation.lockedWhileLaid(chain)
        ? Optional.of(new Shown(sagMm(situation), Shown.Unit.MM))
        : Optional.empty();
  }

  private double sagMm(Situation situation) {
    HoldBack hold = situation.held(chain).orElseThrow();
    LooseStrand loose =
        hold.strands().stream()
            .filter(s -> s.strand().from().equals(from) && s.strand().to().equals(to))
            .findFirst()
            .orElseThrow();
    double extra = loose.slackMm(situation.reseating(chain), hold.pitchMm());
    return loose.sagMm(extra).orElse(loose.longestRunMm() / 2);
  }

  @Override
  public double noticeable(Situation right, Shown reading) {
    return FELT_MM;
  }
}
