package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tightside.drive.Seen;
import tightside.timing.CalliperStretch;
import tightside.timing.Drives;
import tightside.timing.ShaftTiming;

class WordsTest {

  @Test
  void lists() {
    assertThat(Words.list(List.of(), "and")).isEmpty();
    assertThat(Words.list(List.of("a"), "and")).isEqualTo("a");
    assertThat(Words.list(List.of("a", "b"), "and")).isEqualTo("a and b");
    assertThat(Words.list(List.of("a", "b", "c"), "or")).isEqualTo("a, b or c");
  }

  @Test
  void camDegreesForACam_shaftDegreesForAnythingElse() {
    assertThat(Words.shaft(Drives.answered(), new ShaftTiming("exhaust", -10, -20)))
        .isEqualTo("exhaust 10.0 cam degrees (20.0 crank) retarded");
    assertThat(Words.shaft(TwoStages.drive(), new ShaftTiming("idler", 12, 18)))
        .isEqualTo("idler 12.0 shaft degrees (18.0 crank) advanced");
  }

  @Test
  void errorTooSmallToShow_isNotShownAsNothing() {
    assertThat(Words.shaft(Drives.answered(), new ShaftTiming("exhaust", 0.01, 0.02)))
        .isEqualTo("exhaust under 0.1 cam degrees (under 0.1 crank) advanced");
    assertThat(Words.shaft(Drives.answered(), new ShaftTiming("exhaust", 1e-9, 2e-9)))
        .isEqualTo("exhaust right");
  }

  @ParameterizedTest
  @EnumSource(CalliperStretch.Why.class)
  void everyRefusedReading_hasASentence(CalliperStretch.Why why) {
    assertThat(Words.calliper(new CalliperStretch.Refused(why))).matches("[A-Z].{10,}\\.");
  }

  @Test
  void measuredStretch() {
    assertThat(Words.calliper(new CalliperStretch.Measured(0.5)))
        .isEqualTo("The chain is stretched by 0.50 %.");
    assertThat(Words.calliper(new CalliperStretch.Measured(-0.1)))
        .isEqualTo("The chain is stretched by 0.00 %.");
  }

  @ParameterizedTest
  @EnumSource(Seen.class)
  void everyWayOfSeeing_hasWords(Seen seen) {
    assertThat(Words.seen(seen)).isNotBlank();
  }
}
