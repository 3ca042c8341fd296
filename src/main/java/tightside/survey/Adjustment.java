package tightside.survey;

import java.util.List;
import java.util.Optional;
import tightside.drive.Drive;
import tightside.drive.Finding;

/**
 * A measured drive, adjusted.
 *
 * @param drawn the drive as the model draws it: where the adjustment began
 * @param fit the adjustment, counts held whole where they are sure or counted; its first
 *     observations are the survey's measurements
 * @param measurements each with its residual
 * @param global the test of all of them together
 * @param suspect the measurement that is probably wrong
 * @param counts of every strand of every chain, by what was measured
 * @param next what to measure next, and for which count; nothing where every count is sure
 * @param drive the adjusted drive; nothing if what was measured makes none
 * @param trouble what keeps it from being one then
 */
public record Adjustment(
    Drive drawn,
    Survey survey,
    LeastSquaresFit fit,
    List<Checked> measurements,
    Detection.Global global,
    Optional<Checked> suspect,
    List<SureCount> counts,
    Optional<Next> next,
    Optional<Drive> drive,
    List<Finding> trouble) {

  /** A measurement for the sake of the least sure count. */
  public record Next(SureCount count, Optional<Proposal> proposal) {}

  public Adjustment {
    measurements = List.copyOf(measurements);
    counts = List.copyOf(counts);
    trouble = List.copyOf(trouble);
  }

  /**
   * Adjusts a drive to what was measured on it.
   *
   * @return nothing where it does not settle: what was measured and what is drawn have nothing to
   *     do with each other, or the drive is counted only and has no places to begin with
   * @throws IllegalArgumentException if the survey names what the drive has not
   */
  public static Optional<Adjustment> of(Drive drawn, Survey survey) {
    return drawn.countedOnly() ? Optional.empty() : new Adjusting(drawn, survey).adjusted();
  }

  /**
   * Whether counts on the engine agree with the adjusted drive on every strand that can be seen: a
   * drive is measured, not proved, until they do.
   */
  public boolean proved() {
    return suspect.isEmpty()
        && counts.stream().filter(c -> c.strand().seen()).allMatch(SureCount::agrees)
        && counts.stream().anyMatch(c -> c.strand().seen());
  }

  /** The adjusted drive, or the drawn one where that is none. */
  public Drive best() {
    return drive.orElse(drawn);
  }
}
