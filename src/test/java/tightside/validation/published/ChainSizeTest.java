package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Limits;
import tightside.validation.Row;
import tightside.validation.Rows;

/** The program takes every standard chain: its limits catch slips, not sizes. No tolerance. */
class ChainSizeTest {

  @ParameterizedTest
  @Rows("published/chain-sizes.csv")
  void sizeOfTheStandardIsTaken(Row row) {
    assertThat(Limits.PITCH_MM.allow(row.number("pitch_mm"))).isTrue();
    assertThat(Limits.ROLLER_DIAMETER_MM.allow(row.number("roller_mm"))).isTrue();
    if (row.has("plate_height_mm")) {
      assertThatCode(() -> chain(row)).doesNotThrowAnyException();
    }
  }

  @ParameterizedTest
  @Rows("published/chain-sizes-gost-13568.csv")
  void sizeOfTheTranscribedStandardIsTaken(Row row) {
    assertThatCode(() -> chain(row)).doesNotThrowAnyException();
  }

  private static Chain chain(Row row) {
    return new Chain(
        "main",
        ChainKind.ROLLER,
        row.number("pitch_mm"),
        100,
        row.number("plate_height_mm"),
        row.number("roller_mm"),
        List.of());
  }
}
