package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.timing.CountJudge;
import tightside.timing.CountVerdict;
import tightside.timing.Drives;
import tightside.timing.Solver;

class CountWordsTest {

  private final Drive drive = Drives.answered();
  private final CountJudge judge = CountJudge.of(Solver.of(drive), "main");

  private CountVerdict judged(Map<String, Long> counts, Seen cover) {
    return judge.judge(counts, cover);
  }

  private String said(Map<String, Long> counts, Seen cover) {
    return new CountWords(drive, "main", judge.strands(), cover).of(judged(counts, cover));
  }

  private String said(Map<String, Long> counts) {
    return said(counts, Seen.COVER_OFF);
  }

  private List<String> open(Map<String, Long> counts) {
    return new UnprovedWords("main", 118, Seen.COVER_OFF)
        .of(judged(counts, Seen.COVER_OFF).unproved());
  }

  @Test
  void nothingCounted() {
    assertThat(said(Map.of()))
        .isEqualTo(
            "Nothing is counted yet on main; crank to intake, intake to exhaust and exhaust to "
                + "crank can be counted with the cover off.");
    assertThat(said(Map.of(), Seen.COVER_ON))
        .isEqualTo("No strand of main can be counted with the cover on.");
  }

  @Test
  void newChainDoesNotFit() {
    assertThat(
            new CountWords(drive, "main", List.of(), Seen.COVER_OFF)
                .of(judged(Map.of(), Seen.COVER_OFF)))
        .isEqualTo("No count of main can be judged, because its new chain does not fit.");
  }

  @Test
  void fits_bothWaysOfCounting() {
    Map<String, Long> counts = Map.of("exhaust", 50L);
    assertThat(said(counts))
        .isEqualTo(
            "What is counted of main fits: exhaust to crank 50 links from mark to mark = 49 plain "
                + "links between the two painted ones.");
    assertThat(open(counts))
        .containsExactly(
            "Not proved on main: the intake sprocket could sit off, because crank to intake is not "
                + "counted and intake to exhaust is not counted.");
  }

  @Test
  void allFit_nothingOpen() {
    Map<String, Long> counts = Map.of("crank", 51L, "intake", 17L, "exhaust", 50L);
    assertThat(said(counts)).startsWith("Every count of main fits: crank to intake 51 links from ");
    assertThat(open(counts)).isEmpty();
  }

  @Test
  void oneToothAhead() {
    assertThat(said(Map.of("crank", 51L, "intake", 18L, "exhaust", 49L)))
        .isEqualTo(
            "On main the exhaust sprocket sits 1 tooth ahead: exhaust 10.0 cam degrees (20.0 crank)"
                + " advanced; counted: intake to exhaust 18 links from mark to mark = 17 plain"
                + " links between the two painted ones, where 17 (16 plain) belong; exhaust to"
                + " crank 49 links from mark to mark = 48 plain links between the two painted"
                + " ones, where 50 (49 plain) belong.");
  }

  @Test
  void equals_listed() {
    assertThat(said(Map.of("intake", 19L)))
        .contains("the exhaust sprocket sits 2 teeth ahead: exhaust 20.0 cam degrees")
        .contains("or just as simply the intake sprocket sits 2 teeth behind: intake 20.0 cam");
  }

  @Test
  void camsTogether_openFromAbove() {
    assertThat(open(Map.of("intake", 17L)))
        .containsExactly(
            "Not proved on main: the intake and exhaust sprockets could sit off together, because "
                + "crank to intake is not counted and exhaust to crank is not counted.");
  }

  @Test
  void lastStrand_followsFromTheChainsLinks() {
    assertThat(open(Map.of("intake", 17L, "exhaust", 50L)))
        .containsExactly(
            "On main crank to intake is not counted, and follows only if the chain really has 118 "
                + "links.");
  }

  @Test
  void sumIsNotTheChain_countAgain() {
    assertThat(said(Map.of("crank", 51L, "intake", 18L, "exhaust", 50L)))
        .isEqualTo(
            "The counts of main add up to 119 links, 1 too many for its 118: count intake to "
                + "exhaust again, where 17 links from mark to mark = 16 plain links between the two"
                + " painted ones would mean that every sprocket sits right.");
  }

  @Test
  void noSprocketIsSoFarOff_countAgain() {
    assertThat(said(Map.of("crank", 15L, "intake", 17L)))
        .startsWith("The counts of main would mean that the crank sprocket sits 36 teeth ahead, ")
        .contains("count crank to intake again, where 51 links from mark to mark");
  }

  @Test
  void oneLink_noPlainOne() {
    assertThat(Words.links(1))
        .isEqualTo("1 link from mark to mark = 0 plain links between the two painted ones");
    assertThat(Words.links(2))
        .isEqualTo("2 links from mark to mark = 1 plain link between the two painted ones");
  }
}
