package tightside.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.words.TighteningWords;

class TighteningTest {

  private static final Adapter IN_LINE = new Adapter(300, 60, 0);

  private static Bolt bolt(Bolt.Thread thread, Optional<Adapter> adapter) {
    return new Bolt("b", thread, true, Optional.of("a helper."), adapter, List.of());
  }

  /** Common practice, no source: 30 lb-ft, one turn back, 18 lb-ft, 150 degrees further. */
  @Test
  void aSequenceOfTheTradeInWords() {
    Bolt plain = bolt(Bolt.Thread.RIGHT, Optional.empty());
    List<Tightening> steps =
        List.of(
            new Tightening.To(new Torque(30, TorqueUnit.LB_FT)),
            new Tightening.Loosen(360),
            new Tightening.To(new Torque(18, TorqueUnit.LB_FT)),
            new Tightening.Further(150));
    assertThat(steps.stream().map(step -> TighteningWords.step(plain, step)))
        .containsExactly(
            "tighten to 30 lb-ft (40.7 N·m).",
            "loosen by 360° (1 full turn), counterclockwise.",
            "tighten to 18 lb-ft (24.4 N·m).",
            "150° (2.5 flats of a hexagon) further, clockwise.");
  }

  @Test
  void aLeftHandThreadTightensTheOtherWay() {
    Bolt left = bolt(Bolt.Thread.LEFT, Optional.empty());
    assertThat(TighteningWords.step(left, new Tightening.Further(90))).contains("counterclockwise");
    assertThat(TighteningWords.step(left, new Tightening.Loosen(90))).contains(", clockwise");
    assertThat(TighteningWords.ready(left))
        .anyMatch(n -> n.startsWith("LEFT-HAND THREAD"))
        .anyMatch(n -> n.startsWith("MUST BE NEW"))
        .contains("Held against the torque by: a helper.");
  }

  /** 300 / (300 + 60) in line; unchanged to the side; 300 / (300 - 60) turned back; by cosine. */
  @ParameterizedTest
  @CsvSource({"0,60", "90,72", "180,90", "60,65.4545454545"})
  void anAdapterChangesTheSetting(double angle, double setting) {
    Adapter adapter = new Adapter(300, 60, angle);
    assertThat(adapter.setting(new Torque(72, TorqueUnit.NM))).isCloseTo(setting, within(1e-9));
    assertThat(adapter.atTheBolt(setting)).isCloseTo(72, within(1e-9));
  }

  @Test
  void anAdapterChangesNoAngle() {
    Bolt bolt = bolt(Bolt.Thread.RIGHT, Optional.of(IN_LINE));
    assertThat(TighteningWords.notes(bolt, new Tightening.Further(90)))
        .containsExactly("The adapter changes nothing here: an angle is an angle.");
    assertThat(TighteningWords.notes(bolt, new Tightening.To(new Torque(72, TorqueUnit.NM))))
        .allMatch(n -> n.contains("SET THE WRENCH TO 60.0 N·m (44.3 lb-ft)"));
  }

  @Test
  void theSameUnitLosesNothing() {
    assertThat(new Torque(0.1, TorqueUnit.LB_FT).in(TorqueUnit.LB_FT)).isEqualTo(0.1);
    assertThat(new Torque(1, TorqueUnit.LB_FT).in(TorqueUnit.LB_IN)).isCloseTo(12, within(1e-14));
  }

  @Test
  void nonsenseIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Adapter(100, 100, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Torque(Double.NaN, TorqueUnit.NM));
    assertThatIllegalArgumentException().isThrownBy(() -> Bolt.blank("two\nlines"));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Job(
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Job.Order.BOLT_BY_BOLT,
                    List.of(Bolt.blank("a"), Bolt.blank("a"))));
  }
}
