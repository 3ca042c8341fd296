package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Drive;
import tightside.drive.Sprocket;
import tightside.second.Answer;
import tightside.second.Fit;
import tightside.second.Line;
import tightside.second.SecondSolver;

/**
 * Asks the second solver about the same drive in a number of states, and holds the two answers
 * together.
 */
public final class SecondOpinion {

  /** mm, degrees, pitches: some 1e-12 of rounding in each solver, grown by short lever arms. */
  public static final double TOLERANCE = 1e-7;

  /**
   * mm: where the tensioner only just comes to bear, the path grows with the square of what the
   * plunger does, so that 1e-13 in length is 1e-6 in extension.
   */
  public static final double EXTENSION_TOLERANCE = 1e-5;

  private final Drive drive;
  private final Solver first;
  private final SecondSolver second;

  private SecondOpinion(Drive drive) {
    this.drive = drive;
    first = Solver.of(drive);
    second = new SecondSolver(Plans.of(drive));
  }

  /** Fails where the two solvers disagree about a drive: new, stretched, reseated, held. */
  public static void compare(Drive drive) {
    SecondOpinion opinion = new SecondOpinion(drive);
    states(drive).forEach(opinion::compare);
    drive.chains().forEach(opinion::compareHeld);
  }

  private static List<State> states(Drive drive) {
    State reference = State.reference();
    List<State> states = new ArrayList<>(List.of(reference));
    State worn = reference;
    State wrong = reference;
    int teeth = 0;
    for (Chain chain : drive.chains()) {
      states.add(reference.stretched(chain.name(), 0.2));
      worn = worn.stretched(chain.name(), 0.5);
      for (Sprocket sprocket : chain.sprockets()) {
        teeth = teeth == 3 ? -3 : teeth + 1;
        Seat seat = new Seat(chain.name(), sprocket.shaft());
        states.add(reference.reseated(seat, teeth));
        wrong = wrong.reseated(seat, teeth);
      }
    }
    for (Map.Entry<Seat, Integer> reseat : wrong.reseats().entrySet()) {
      worn = worn.reseated(reseat.getKey(), reseat.getValue());
    }
    states.addAll(List.of(wrong, worn));
    return states;
  }

  private void compare(State state) {
    Map<String, Integer> reseats = new HashMap<>();
    state.reseats().forEach((seat, k) -> reseats.put(seat.chain() + "/" + seat.shaft(), k));
    Answer answer = second.solve(state.stretchPercent(), reseats);
    Solution solution = first.solve(state);
    for (ChainSolution chain : solution.chains()) {
      compare(state, chain, answer.loops().get(chain.chain().name()));
    }
    for (ShaftTiming shaft : solution.shafts()) {
      assertThat(shaft.shaftDegrees())
          .as("error of %s of %s in %s", shaft.shaft(), drive.name(), state)
          .isCloseTo(answer.errors().get(shaft.shaft()), within(TOLERANCE));
    }
  }

  private void compare(State state, ChainSolution chain, Answer.Looped loop) {
    String what = "chain " + chain.chain().name() + " of " + drive.name() + " in " + state;
    assertThat(how(chain.whenNew())).as("new, " + what).isEqualTo(loop.whenNew().how());
    assertThat(how(chain.fit())).as(what).isEqualTo(loop.fit().how());
    assertThat(amount(chain.fit()))
        .as("over or lacking, " + what)
        .isCloseTo(loop.fit().amount(), within(TOLERANCE));
    chain
        .fit()
        .path()
        .ifPresent(
            path ->
                assertThat(path.pitches())
                    .as("pitches of the path, " + what)
                    .isCloseTo(loop.pathPitches(), within(TOLERANCE)));
    chain
        .tensioner()
        .ifPresent(
            reading ->
                assertThat(reading.extensionMm())
                    .as("extension, " + what)
                    .isCloseTo(loop.fit().extension(), within(EXTENSION_TOLERANCE)));
    assertThat(chain.strands()).as("strands, " + what).hasSameSizeAs(loop.strands());
    for (int i = 0; i < chain.strands().size(); i++) {
      compare(what, chain.strands().get(i), loop.strands().get(i));
    }
  }

  private static void compare(String what, Strand strand, Answer.Stretch other) {
    String which = strand.from() + " to " + strand.to() + ", " + what;
    assertThat(List.of(strand.from(), strand.to(), strand.links(), strand.taut()))
        .as(which)
        .isEqualTo(List.of(other.from(), other.to(), other.links(), other.taut()));
    assertThat(strand.pitches()).as(which).isCloseTo(other.pitches(), within(TOLERANCE));
    assertThat(strand.misfit().isPresent())
        .as("misfit known, " + which)
        .isEqualTo(other.misfit().isPresent());
    assertThat(strand.misfit().orElse(0))
        .as("misfit, " + which)
        .isCloseTo(other.misfit().orElse(0), within(TOLERANCE));
  }

  private static Fit.How how(ChainFit fit) {
    if (fit instanceof ChainFit.Solved) {
      return Fit.How.FITS;
    }
    if (fit instanceof ChainFit.TooShort) {
      return Fit.How.TOO_SHORT;
    }
    return fit instanceof ChainFit.OutOfTravel ? Fit.How.OUT_OF_TRAVEL : Fit.How.NO_PATH;
  }

  private static double amount(ChainFit fit) {
    if (fit instanceof ChainFit.Solved solved) {
      return solved.slackMm();
    }
    if (fit instanceof ChainFit.TooShort tooShort) {
      return tooShort.byMm();
    }
    return fit instanceof ChainFit.OutOfTravel out ? out.slackLeftMm() : 0;
  }

  private void compareHeld(Chain chain) {
    Optional<Double> travel = chain.tensioner().map(t -> t.plunger().travelMm());
    for (double part : travel.isPresent() ? List.of(0.0, 0.3, 1.0) : List.<Double>of()) {
      double held = part * travel.get();
      ChainFit fit =
          first
              .solve(State.reference().held(chain.name(), held))
              .chain(chain.name())
              .orElseThrow()
              .fit();
      Optional<Line> line = second.line(chain.name(), held);
      assertThat(fit.path().isPresent())
          .as("a path of %s of %s held at %s mm", chain.name(), drive.name(), held)
          .isEqualTo(line.isPresent());
      if (line.isEmpty()) {
        continue;
      }
      double over = fit instanceof ChainFit.TooShort ? -amount(fit) : amount(fit);
      assertThat(over)
          .as("slack of %s of %s held at %s mm", chain.name(), drive.name(), held)
          .isCloseTo(second.slack(chain.name(), held), within(TOLERANCE));
    }
  }
}
