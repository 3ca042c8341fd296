package tightside.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The ready lessons. What is right in them is reckoned here by hand: a tooth of z is 360/z of its
 * shaft and twice that of the crankshaft; links by whole numbers; compression by the slider-crank
 * of 44 and 140 mm with the valve closing at 204 degrees; stretch as the design's answered example
 * has it (intake 1.015 camshaft degrees retarded at 0.2 %).
 */
class ReadyLessonTest {

  @ParameterizedTest
  @CsvSource({
    "PAINT,        WRONG_TOOTH, exhaust,     RETARDED, 20,    1e-9",
    "TWO_TURNS,    NOTHING,     '',          NEITHER,  118,   0",
    "TEN_DEGREES,  WRONG_TOOTH, left-intake, RETARDED, 12,    1e-9",
    "PLAIN_LINKS,  WRONG_TOOTH, intake,      RETARDED, 20,    1e-9",
    "TOOL_GOES_IN, WORN_CHAIN,  intake,      RETARDED, 2.03,  0.005",
    "EARLY_CAM,    WRONG_TOOTH, intake,      ADVANCED, 9.2435, 0.0001"
  })
  void theRightAnswer(
      ReadyLesson lesson, Cause cause, String shaft, Way way, double amount, double tolerance) {
    Diagnosis right = Lessons.sheet(lesson).key().right();
    assertThat(right.cause()).isEqualTo(cause);
    assertThat(right.shaft()).isEqualTo(shaft);
    assertThat(right.way()).isEqualTo(way);
    assertThat(right.amount()).isCloseTo(amount, within(tolerance));
  }

  @ParameterizedTest
  @EnumSource(ReadyLesson.class)
  void itsWordsAreAllThereAndNoFactIsMissing(ReadyLesson lesson) {
    LessonSheet sheet = Lessons.sheet(lesson);
    Opened key = sheet.key();
    String all =
        Stream.of(
                Stream.of(sheet.title(), sheet.belief().orElseThrow(), sheet.story(), sheet.ask()),
                sheet.belongs().stream(),
                sheet.seen().stream(),
                key.explained().stream().map(Explained::why),
                key.after().stream(),
                Stream.of(sheet.closing().orElseThrow().question()),
                sheet.closing().orElseThrow().options().stream())
            .flatMap(s -> s)
            .collect(Collectors.joining("\n"));
    assertThat(all).doesNotContain("{").doesNotContain("}").doesNotContain("null");
    assertThat(key.explained()).extracting(Explained::part).containsExactly(Part.values());
    assertThat(key.after()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(sheet.closing().orElseThrow().options()).doesNotHaveDuplicates().hasSize(3);
    assertThat(Stream.of(0, 1, 2).filter(sheet::states)).hasSize(1);
  }

  /** Figures that drift would be figures that are typed. */
  @Test
  void theExplanationsSpeakTheSolversNumbers() {
    assertThat(String.join(" ", Lessons.sheet(ReadyLesson.PAINT).key().after()))
        .contains("36 links have passed", "exhaust camshaft still stands 20.00 crank degrees")
        .contains("16 links intake to exhaust, where 17 belong");
    assertThat(Lessons.sheet(ReadyLesson.TWO_TURNS).key().explained().get(3).why())
        .contains("18 links pass", "118 links", "after 118 turns");
    assertThat(Lessons.sheet(ReadyLesson.TEN_DEGREES).key().explained().get(3).why())
        .contains("360/30 = 12.00 degrees", "24.00 crank degrees");
    assertThat(Lessons.sheet(ReadyLesson.TOOL_GOES_IN).seen())
        .contains(
            "The locking tool of intake goes in.",
            "The plunger of the tensioner of main stands 18.0 mm out.");
    assertThat(String.join(" ", Lessons.sheet(ReadyLesson.TOOL_GOES_IN).key().after()))
        .as("in the degrees of the tools, as the design's page has them: 1.015 and 0.755")
        .contains("intake by 1.01 degrees of its own (2.03 of the crankshaft)")
        .contains("exhaust by 0.76 degrees of its own")
        .contains("A tool has 1.5 degrees of play on its camshaft");
    assertThat(Lessons.sheet(ReadyLesson.EARLY_CAM).key().explained().get(3).why())
        .contains("204.0 crank degrees", "instead of 224.0");
  }

  @Test
  void onlyPlainLinksAreToldWhereTheWayOfCountingIsTheQuestion() {
    assertThat(String.join(" ", Lessons.sheet(ReadyLesson.PLAIN_LINKS).seen()))
        .contains("From intake to exhaust you count 17 plain links between the two marked ones.")
        .doesNotContain("mark to mark");
  }

  @Test
  void aStoryKnowsNothingOfWhatIsWrong() {
    for (ReadyLesson lesson : ReadyLesson.values()) {
      LessonSheet sheet = Lessons.sheet(lesson);
      assertThat(sheet.toString()).doesNotContain("Diagnosis").doesNotContain("State");
    }
  }
}
