package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.drive.Chain;
import tightside.timing.Drives;

class CountTest {

  private final Chain chain = Drives.chain(Drives.answered());

  /** Between two marked links that follow each other directly there is no plain one. */
  @ParameterizedTest
  @CsvSource({"51, MARK_TO_MARK, 51", "50, BETWEEN, 51", "0, BETWEEN, 1", "117, BETWEEN, 118"})
  void bothWays_sameLinks(String text, CountingWay way, double links) {
    assertThat(new Count(text, way).links(chain)).isEqualTo(new Typed.Number(links));
  }

  @ParameterizedTest
  @CsvSource({"0, MARK_TO_MARK", "119, MARK_TO_MARK", "118, BETWEEN", "-1, BETWEEN", "x, BETWEEN"})
  void impossible_refused(String text, CountingWay way) {
    assertThat(new Count(text, way).links(chain)).isInstanceOf(Typed.Refused.class);
  }

  @Test
  void refusalSpeaksOfWhatWasCounted() {
    assertThat(new Count("118", CountingWay.BETWEEN).links(chain).refusal())
        .contains("A count lies from 0 to 117 links, not 118.");
  }
}
