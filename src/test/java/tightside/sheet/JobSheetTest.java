package tightside.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Seen;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.job.Job;
import tightside.timing.Seat;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;

class JobSheetTest {

  private static Work work(String name, Seen cover) {
    Model model = ModelReader.read(Path.of("models", name)).model().orElseThrow();
    return new Work(
        model.drive(), model.engine(), model.phasers(), model.job().orElse(Job.unsaid()), cover);
  }

  private static JobSheet twoCams(Seen cover) {
    return JobSheet.of(work("two-cams-arm.yaml", cover));
  }

  static Stream<String> models() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("models"))) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(".yaml"))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyDriveHasAllParts(String model) {
    JobSheet sheet = JobSheet.of(work(model, Seen.COVER_ON));
    assertThat(sheet.sections()).extracting(Section::part).containsExactly(Part.values());
    assertThat(sheet.sections()).allMatch(s -> !s.lead().isEmpty() || !s.steps().isEmpty());
  }

  @Test
  void idsStayTheSame() {
    assertThat(twoCams(Seen.COVER_OFF)).isEqualTo(twoCams(Seen.COVER_OFF));
  }

  /** The counts of the answered example in the project's own brief. */
  @ParameterizedTest
  @CsvSource({"crank,intake,51", "intake,exhaust,17", "exhaust,crank,50"})
  void aCountIsJudgedAtOnce(String from, String to, long right) {
    Step step =
        twoCams(Seen.COVER_OFF).step("before/count/main/%s/%s".formatted(from, to)).orElseThrow();
    assertThat(step.judge(new Entry.Number(right)).verdict()).isEqualTo(Verdict.RIGHT);
    Judgement plain = step.judge(new Entry.Number(right - 1));
    assertThat(plain.verdict()).isEqualTo(Verdict.WRONG);
    assertThat(plain.words()).contains("1 link too few", "plain links alone");
    assertThat(step.judge(new Entry.Number(right + 0.5)).verdict()).isEqualTo(Verdict.OPEN);
    assertThat(step.judge(new Entry.Text("fifty")).verdict()).isEqualTo(Verdict.OPEN);
  }

  @Test
  void whatCantBeSeenIsNotAskedFor() {
    JobSheet on = twoCams(Seen.COVER_ON);
    assertThat(on.step("before/count/main/intake/exhaust")).isPresent();
    assertThat(on.step("before/count/main/crank/intake")).isEmpty();
    assertThat(on.step("before/hidden/main").orElseThrow().text()).contains("crank to intake");
    assertThat(on.section(Part.UNPROVED).steps())
        .anyMatch(s -> s.text().contains("sit off together"));
  }

  @Test
  void countsTogetherNameTheTooth() {
    Work work = work("two-cams-arm.yaml", Seen.COVER_OFF);
    Solution off =
        Solver.solve(work.drive(), State.reference().reseated(new Seat("main", "exhaust"), -1));
    Map<String, Entry> entries = new HashMap<>();
    for (Strand strand : off.chains().get(0).strands()) {
      entries.put(
          "prove/count/main/%s/%s".formatted(strand.from(), strand.to()),
          new Entry.Number(strand.links()));
    }
    List<Judgement> together =
        Together.of(work.drive(), work.cover())
            .judge(JobSheet.of(work).section(Part.PROVE), entries);
    assertThat(together).hasSize(1);
    assertThat(together.get(0).verdict()).isEqualTo(Verdict.WRONG);
    assertThat(together.get(0).words()).contains("exhaust sits 1 tooth behind");
  }

  /** Half of one tooth of 36 is 5 camshaft degrees. */
  @Test
  void moreThanHalfAToothToTheDowelIsWrong() {
    Step step = twoCams(Seen.COVER_ON).step("on/dowel/intake").orElseThrow();
    assertThat(step.judge(new Entry.Number(5.1)).verdict()).isEqualTo(Verdict.WRONG);
    assertThat(step.judge(new Entry.Number(2)).verdict()).isEqualTo(Verdict.RIGHT);
    assertThat(step.judge(new Entry.Number(4.9)).verdict()).isEqualTo(Verdict.OPEN);
  }

  /** The example's plunger stands at 14.23 mm new and at 22.45 mm at 0.5 % stretch. */
  @Test
  void aPlungerIsReadAsAnInterval() {
    Step step = twoCams(Seen.BORESCOPE).step("before/plunger/main").orElseThrow();
    assertThat(step.judge(new Entry.Number(13)).verdict()).isEqualTo(Verdict.RIGHT);
    assertThat(step.judge(new Entry.Number(15.5)).verdict()).isEqualTo(Verdict.RIGHT);
    assertThat(step.judge(new Entry.Number(10)).verdict()).isEqualTo(Verdict.WRONG);
    assertThat(step.judge(new Entry.Number(28)).verdict()).isEqualTo(Verdict.WRONG);
    Judgement worn = step.judge(new Entry.Number(22.4));
    assertThat(worn.verdict()).isEqualTo(Verdict.OPEN);
    assertThat(worn.words()).contains("up to 0.5").contains("maker's limit");
  }

  @Test
  void bandsLeaveNoGap() {
    for (Seen cover : List.of(Seen.COVER_ON, Seen.COVER_OFF, Seen.BORESCOPE)) {
      for (Step step : twoCams(cover).toEnter()) {
        if (step.field() instanceof Field.Reading reading && reading.unit() != Field.Unit.TEETH) {
          assertThat(gaps(reading)).as(step.id()).isEmpty();
        }
      }
    }
  }

  private static List<Band> gaps(Field.Reading reading) {
    Band[] bands = reading.bands().toArray(Band[]::new);
    return Arrays.stream(bands)
        .skip(1)
        .filter(
            b ->
                Arrays.stream(bands)
                    .noneMatch(a -> a.to() == b.from() || Math.nextUp(a.to()) == b.from()))
        .toList();
  }
}
