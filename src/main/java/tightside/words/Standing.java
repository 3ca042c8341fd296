package tightside.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.reasoning.Reading;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;
import tightside.timing.StretchLimit;

/** Where a reading stands beside the limits of its drive, in words. */
public final class Standing {

  /** What ISO 606 allows a new roller or bush chain to be longer, percent. */
  private static final double NEW_PERCENT = 0.15;

  private static final double LEAST_DEGREES = 0.05;
  private static final double READABLE_MM = 0.05;

  private final Drive drive;
  private final Solver solver;
  private final Solution right;

  public Standing(Drive drive) {
    this.drive = drive;
    solver = Solver.of(drive);
    right = solver.solve(State.reference());
  }

  /** Nothing where the reading says all by itself. */
  public Optional<String> of(Reading reading) {
    if (reading instanceof Reading.PlungerStands plunger) {
      return plunger(plunger);
    }
    if (reading instanceof Reading.Calliper calliper) {
      return drive.chain(calliper.chain()).map(chain -> calliper(chain, calliper));
    }
    return reading instanceof Reading.Counted count ? counted(count) : Optional.empty();
  }

  private Optional<String> plunger(Reading.PlungerStands plunger) {
    Optional<ChainSolution> solution = right.chain(plunger.chain());
    if (solution.isEmpty() || solution.get().tensioner().isEmpty()) {
      return Optional.empty();
    }
    Chain chain = solution.get().chain();
    double travel = chain.tensioner().orElseThrow().plunger().travelMm();
    double left = travel - plunger.highMm();
    OptionalDouble limit = StretchLimit.of(drive, chain);
    String until =
        left > READABLE_MM
            ? "%s mm of travel are left".formatted(Numbers.fixed(left, 1))
            : "that is its limit, no travel is left";
    return Optional.of(
        "a new chain leaves it at %s mm, its travel ends at %s mm: %s"
                .formatted(
                    Numbers.fixed(solution.get().tensioner().get().extensionMm(), 1),
                    Numbers.fixed(travel, 1),
                    until)
            + (limit.isPresent()
                ? "; a chain worn by %s %% in all leaves none"
                    .formatted(Numbers.fixed(limit.getAsDouble(), 2))
                : ""));
  }

  private String calliper(Chain chain, Reading.Calliper reading) {
    double newMm = reading.pitches() * chain.pitchMm();
    double percent = (reading.lengthMm() - newMm) / newMm * 100;
    double spread = reading.spreadMm() / newMm * 100;
    StringBuilder words = new StringBuilder();
    words.append(
        "%s %% %s than new (%s to %s within one spread)"
            .formatted(
                Numbers.fixed(Math.abs(percent), 2),
                percent < 0 ? "shorter" : "longer",
                Numbers.fixed(percent - spread, 2),
                Numbers.fixed(percent + spread, 2)));
    if (chain.kind() != ChainKind.TOOTHED && percent <= NEW_PERCENT) {
      words.append("; ISO 606 lets a new chain be up to 0.15 % long");
    }
    if (percent > 0) {
      words.append(late(chain, percent));
    }
    return words + "; compare with the maker's limit, which is not known here";
  }

  /** What so much stretch would make of the camshafts. */
  private String late(Chain chain, double percent) {
    Solution worn = solver.solve(State.reference().stretched(chain.name(), percent));
    List<String> camshafts = new ArrayList<>();
    for (Shaft shaft : drive.shafts()) {
      double degrees = worn.shaft(shaft.name()).map(s -> s.crankDegrees()).orElse(0.0);
      if (shaft.role() == Role.CAMSHAFT && Math.abs(degrees) > LEAST_DEGREES) {
        camshafts.add(
            shaft.name()
                + " "
                + Numbers.fixed(Math.abs(degrees), 1)
                + (degrees < 0 ? " late" : " ahead"));
      }
    }
    return camshafts.isEmpty()
        ? ""
        : "; worn so, %s (crank degrees)".formatted(Sentences.list(camshafts, "and"));
  }

  private Optional<String> counted(Reading.Counted count) {
    return right.chain(count.chain()).stream()
        .flatMap(c -> c.strands().stream())
        .filter(s -> s.from().equals(count.from()) && s.to().equals(count.to()))
        .findFirst()
        .map(Strand::links)
        .map(
            links ->
                links == count.links() ? "as it should be" : "%d belong there".formatted(links));
  }
}
