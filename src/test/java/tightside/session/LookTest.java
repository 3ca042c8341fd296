package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class LookTest {

  @Test
  void textGrowsAndShrinksInSteps_asFarAsItGoes() {
    assertThat(Look.usual().textSteps(3).textPercent()).isEqualTo(130);
    assertThat(Look.usual().textSteps(99).textPercent()).isEqualTo(Look.LARGEST_TEXT);
    assertThat(Look.usual().textSteps(-99).textPercent()).isEqualTo(Look.SMALLEST_TEXT);
    assertThat(Look.usual().textSteps(3).textSteps(-3)).isEqualTo(Look.usual());
  }

  @Test
  void unreadableText_refused() {
    Look look = Look.usual();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Look(look.selected(), look.counting(), 5));
  }
}
