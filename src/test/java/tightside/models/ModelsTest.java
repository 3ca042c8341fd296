package tightside.models;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.drive.TautPath;
import tightside.files.ModelReader;
import tightside.files.ModelReading;
import tightside.timing.ChainSolution;
import tightside.timing.Drives;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;
import tightside.timing.TensionerReading;

/** The drives that come with the tool: they are what they are meant to teach, to the last link. */
class ModelsTest {

  /** What a model's misfit may be: a mark's bearing is written to a hundredth of a degree. */
  private static final double WHOLE_PITCHES = 0.02;

  /** The same of one that was measured: what a count is held to when it is adjusted. */
  private static final double MEASURED_PITCHES = 0.05;

  /** The least wrap that keeps a chain on its teeth; common practice, no source. */
  private static final double LEAST_TEETH = 5;

  /** Half of the last digit that the table prints. */
  private static final Offset<Double> AS_PRINTED = within(0.005);

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(PrintedChain.FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  static List<PrintedChain> chains() throws IOException {
    return PrintedChain.all();
  }

  /** The drives with geometry. */
  static List<Path> placed() throws IOException {
    return files().stream().filter(file -> !drive(file).countedOnly()).toList();
  }

  private static Drive drive(Path file) {
    ModelReading reading = ModelReader.read(file);
    assertThat(reading.problems()).as("problems of %s", file).isEmpty();
    return reading.model().orElseThrow().adjusted().drive();
  }

  private static double misfit(Path file) {
    return ModelReader.read(file).model().orElseThrow().measured().isPresent()
        ? MEASURED_PITCHES
        : WHOLE_PITCHES;
  }

  private static ChainSolution solved(Drive drive, State state, String chain) {
    return Solver.solve(drive, state).chain(chain).orElseThrow();
  }

  @Test
  void theTablesNameEveryFileAndChain() throws IOException {
    List<String> there = files().stream().map(file -> file.getFileName().toString()).toList();
    assertThat(there).hasSizeGreaterThanOrEqualTo(4);
    assertThat(PrintedChain.rows().stream().filter(cells -> cells.size() == 4))
        .extracting(cells -> cells.get(0))
        .containsExactlyInAnyOrderElementsOf(there);
    List<String> known =
        files().stream()
            .flatMap(f -> drive(f).chains().stream().map(c -> f.getFileName() + " " + c.name()))
            .toList();
    assertThat(PrintedChain.all().stream().map(PrintedChain::toString))
        .containsExactlyInAnyOrderElementsOf(known);
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyModelSaysThatItIsInvented(Path file) {
    assertThat(drive(file).about()).contains("Invented for practice.");
  }

  @ParameterizedTest
  @MethodSource("files")
  void camshaftsTurnAtHalfCrankSpeed(Path file) {
    Drive drive = drive(file);
    List<Shaft> camshafts =
        drive.shafts().stream().filter(shaft -> shaft.role() == Role.CAMSHAFT).toList();
    assertThat(camshafts)
        .isNotEmpty()
        .allSatisfy(
            shaft ->
                assertThat(drive.gearing().perCrankTurn(shaft.name()))
                    .isEqualTo(BigFraction.of(1, 2)));
  }

  @ParameterizedTest
  @MethodSource("placed")
  void everyStrandIsWholePitchesAndEverySprocketWellWrapped(Path file) {
    Drive drive = drive(file);
    for (ChainSolution solution : Solver.solve(drive, State.reference()).chains()) {
      assertThat(solution.chain().links()).isEven();
      assertThat(solution.strands()).hasSizeGreaterThanOrEqualTo(2);
      assertThat(solution.strands().stream().map(Strand::misfit).filter(OptionalDouble::isPresent))
          .isNotEmpty()
          .allSatisfy(m -> assertThat(m.getAsDouble()).isCloseTo(0, within(misfit(file))));
      TautPath path = solution.fit().path().orElseThrow();
      for (int place : solution.chain().sprocketPlaces()) {
        double wrapped =
            path.wrap(place).degrees() * solution.chain().sprocketAt(place).teeth() / 360;
        assertThat(wrapped).as("place %s of %s", place, file).isGreaterThan(LEAST_TEETH);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("placed")
  void tensionersHaveRoomForWearAndForPushingBack(Path file) {
    Drive drive = drive(file);
    for (Chain chain : drive.chains().stream().filter(c -> c.tensioner().isPresent()).toList()) {
      State worn = State.reference().stretched(chain.name(), 0.5);
      TensionerReading isNew =
          solved(drive, State.reference(), chain.name()).tensioner().orElseThrow();
      TensionerReading later = solved(drive, worn, chain.name()).tensioner().orElseThrow();
      assertThat(isNew.extensionMm() / isNew.travelMm()).isBetween(0.2, 0.7);
      assertThat(later.taut()).isTrue();
      assertThat(later.extensionMm()).isBetween(isNew.extensionMm(), later.travelMm());
    }
  }

  @ParameterizedTest
  @MethodSource("chains")
  void theTableOfChainsIsWhatTheSolverSays(PrintedChain printed) {
    Drive drive = drive(PrintedChain.FOLDER.resolve(printed.file()));
    ChainSolution solution = solved(drive, State.reference(), printed.chain());
    List<Strand> strands = solution.strands();
    assertThat(solution.chain().links()).isEqualTo(printed.links());
    assertThat(strands).extracting(Strand::links).isEqualTo(printed.counts());
    assertThat(Stream.concat(strands.stream().map(Strand::from), Stream.of(strands.get(0).from())))
        .isEqualTo(printed.shafts());
    assertThat(strands).extracting(Strand::taut).startsWith(false, true);
    assertThat(drive.countedOnly()).isEqualTo(printed.slackMm().isEmpty());
    printed
        .slackMm()
        .ifPresent(
            mm ->
                assertThat(slackPushedBack(drive, solution.chain()))
                    .isPositive()
                    .isCloseTo(mm, AS_PRINTED));
    assertThat(solution.tensioner().isPresent()).isEqualTo(printed.plungerMm().isPresent());
    solution
        .tensioner()
        .ifPresent(
            t -> {
              assertThat(t.travelMm()).isEqualTo(printed.travelMm().orElseThrow());
              assertThat(t.extensionMm()).isCloseTo(printed.plungerMm().orElseThrow(), AS_PRINTED);
              assertThat(runsOutPercent(drive, printed.chain()))
                  .isCloseTo(printed.runsOutPercent().orElseThrow(), AS_PRINTED);
            });
  }

  private static double slackPushedBack(Drive drive, Chain chain) {
    State reference = State.reference();
    State back = chain.tensioner().isPresent() ? reference.held(chain.name(), 0) : reference;
    return ((ChainFit.Solved) solved(drive, back, chain.name()).fit()).slackMm();
  }

  private static double runsOutPercent(Drive drive, String chain) {
    Solver solver = Solver.of(drive);
    double holds = 0;
    double out = 10;
    while (out - holds > 1e-6) {
      double middle = (holds + out) / 2;
      ChainFit fit =
          solver.solve(State.reference().stretched(chain, middle)).chain(chain).orElseThrow().fit();
      if (fit instanceof ChainFit.Solved) {
        holds = middle;
      } else {
        out = middle;
      }
    }
    return holds;
  }

  @Test
  void twoCamsArmIsTheAnsweredExampleOfTheFormat() {
    Drive drive = drive(PrintedChain.FOLDER.resolve("two-cams-arm.yaml"));
    ChainSolution here = solved(drive, State.reference(), "main");
    ChainSolution there = solved(Drives.answered(), State.reference(), "main");
    assertThat(here.strands())
        .extracting(Strand::pitches)
        .isEqualTo(there.strands().stream().map(Strand::pitches).toList());
    assertThat(here.fit()).isEqualTo(there.fit());
  }
}
