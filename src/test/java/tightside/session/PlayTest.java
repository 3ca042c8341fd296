package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PlayTest {

  private static final long SECOND = 1_000_000_000L;

  @Test
  void noTime_noTurn() {
    assertThat(Play.angle(30, 90, 0)).isEqualTo(30);
  }

  @Test
  void onceRoundInFourSecondsAtNinetyDegreesASecond() {
    assertThat(Play.angle(30, 90, 4 * SECOND)).isEqualTo(390);
    assertThat(Play.angle(30, -90, 4 * SECOND)).isEqualTo(-330);
  }

  /** A day at sixty pictures a second ends where a day in one step does. */
  @Test
  void noErrorGathers() {
    assertThat(Play.angle(0, 36, 86_400 * SECOND)).isCloseTo(3_110_400, within(1e-9));
  }

  @Test
  void clockThatWentBack_noTurn() {
    assertThat(Play.angle(30, 90, -SECOND)).isEqualTo(30);
  }

  @Test
  void endlessPlay_stopsAtTheEnd() {
    assertThat(Play.angle(0, 1e9, SECOND)).isEqualTo(Crank.ANGLE.most());
    assertThat(Play.angle(0, -1e9, SECOND)).isEqualTo(Crank.ANGLE.least());
  }
}
