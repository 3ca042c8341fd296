package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** The answer of the model format's example: at 0.5 % the cams stand 1.88 and 2.53 retarded. */
class ExplainVerbTest {

  @Test
  void everyFieldOfTheFormat() {
    Run run =
        Run.of(
            "explain",
            Run.ANSWERED,
            "--reading",
            "intake=-5.06",
            "--reading",
            "exhaust=-3.76",
            "--sigma",
            "0.4",
            "--extension",
            "main=22.45",
            "--count",
            "intake..exhaust=17",
            "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(1);
    JsonNode first = run.json().get("explanations").get(0);
    assertThat(first.get("cause").asString()).isEqualTo("stretch");
    assertThat(first.get("chain").asString()).isEqualTo("main");
    assertThat(first.get("shaft").isNull()).isTrue();
    assertThat(first.get("teeth").isNull()).isTrue();
    assertThat(first.get("percent").asDouble()).isCloseTo(0.5, within(0.03));
    assertThat(first.get("probability").asDouble()).isGreaterThan(0.9);
    JsonNode next = run.json().get("nextCheck");
    assertThat(next.get("check").asString()).isNotEmpty();
    assertThat(next.get("minutes").asDouble()).isPositive();
    assertThat(next.get("expects")).isNotEmpty();
    double before = 1;
    for (JsonNode one : run.json().get("explanations")) {
      assertThat(one.get("probability").asDouble()).isLessThanOrEqualTo(before);
      before = one.get("probability").asDouble();
    }
  }

  @Test
  void anAnswerThatOnlyASensorIsWrongIsNoFaultOfTheDrive() {
    Run run =
        Run.of(
            "explain",
            Run.ANSWERED,
            "--reading=intake=0",
            "--reading=exhaust=-7",
            "--reading=exhaust=-7.1@phaser-unplugged",
            "--tool=exhaust=yes",
            "--cover=off");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("sensor or wheel of exhaust").contains("Next: ");
  }

  @Test
  void programsAreToldWhatACountedDriveLeavesOut() {
    JsonNode answer =
        Run.of("explain", "models/counted-by-hand.yaml", "--reading=intake=-7", "--json").json();
    assertThat(answer.get("leftOut").get(0).asString())
        .startsWith("This drive is counted only: tensioners, worn guides and a skimmed head");
    JsonNode whole = Run.of("explain", Run.ANSWERED, "--reading=intake=-7", "--json").json();
    assertThat(whole.get("leftOut")).hasSize(1);
    JsonNode foreseen = whole.get("explanations").get(0).get("foreseen").get(0);
    assertThat(foreseen.get("expected").isNumber()).isTrue();
    assertThat(foreseen.get("spreadsOff").asDouble()).isNotNegative();
    assertThat(foreseen.get("chance").isNull()).isTrue();
  }

  @Test
  void aSuspectedJumpIsNotCranked() {
    Run run = Run.of("explain", Run.ANSWERED, "--reading=intake=0", "--reading=exhaust=-20");
    assertThat(run.out()).contains("Do not crank or run this engine before");
  }

  @Test
  void priorsMinutesAndAccessAreTheUsers() {
    String[] words = {
      "explain",
      Run.ANSWERED,
      "--reading=intake=0",
      "--reading=exhaust=-20",
      "--prior=reseat=0",
      "--minutes=oil=never",
      "--minutes=wiring=90",
      "--opening=borescope=never",
      "--turned-by-hand",
      "--json"
    };
    JsonNode answer = Run.of(words).json();
    for (JsonNode one : answer.get("explanations")) {
      assertThat(one.get("cause").asString()).isNotEqualTo("reseat");
    }
    for (JsonNode one : answer.get("checks")) {
      assertThat(one.get("check").asString()).isNotEqualTo("oil");
      assertThat(one.get("access").asString()).isNotEqualTo("borescope");
      assertThat(one.get("held").asBoolean()).isFalse();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--cover=on | nothing was read; give at least one reading, such as --reading intake=-4",
        "--reading=pump=3 | the drive has no shaft \"pump\"; its camshafts are intake and exhaust",
        "--reading=crank=3 | \"crank\" is no camshaft with a mark; those are intake and exhaust",
        "--reading=intake | --reading intake says nothing; write SHAFT=CRANKDEG, such as intake=-4.1",
        "--reading=intake=4,1 | --reading: \"4,1\" can't be meant; write a number with a decimal point, from -360 to 360",
        "--reading=intake=4@warm | --reading: \"warm\" is no condition; write cold-idle, hot-idle",
        "--extension=left=3 | the drive has no chain \"left\"; its chains are main",
        "--extension=main=99 | --extension: \"99\" can't be meant",
        "--count=crank..pump=3 | no run leads from mark to mark as \"crank..pump\"; the runs are crank..intake, intake..exhaust and exhaust..crank",
        "--count=crank..intake=5.5 | links are whole, not 5.5",
        "--calliper=main=9:72 | wear grows alternate pitches",
        "--calliper=main=10:200 | --calliper length: \"200\" can't be meant",
        "--tool=intake=perhaps | \"perhaps\" is neither yes nor no",
        "--prior=rust=3 | there is no cause \"rust\"; the causes are none, stretch, reseat",
        "--minutes=prayer=3 | there is no check \"prayer\"; the checks are oil, wiring",
        "--sigma=0 | --sigma: \"0\" can't be meant",
        "--edges=intake=3 | a cam wheel has 2 to 24 edges",
        "--looked=oil=so-so | --looked: write oil=good"
      })
  void everyBadWordGetsOneClearSentence(String word, String says) {
    Run run =
        word.startsWith("--cover")
            ? Run.of("explain", Run.ANSWERED, word)
            : Run.of("explain", Run.ANSWERED, "--reading=intake=1", word);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().strip()).contains(says).doesNotContain("Exception");
    assertThat(run.err().strip().lines()).hasSize(1);
  }
}
