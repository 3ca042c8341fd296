package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Drive;
import tightside.engine.Engine;
import tightside.engine.LiftLaw;
import tightside.engine.Phaser;
import tightside.engine.Valve;
import tightside.timing.Drives;

/** A model refuses what could not be written to a file and read back. */
class ModelTest {

  private static final Phaser PHASER = new Phaser(25, Phaser.Rest.RETARDED);

  private static Model phased(String shaft) {
    return new Model(Drives.answered(), Optional.empty(), Map.of(shaft, PHASER), Optional.empty());
  }

  @Test
  void aPhaserSitsOnACamshaft() {
    assertThat(phased("intake").phasers()).containsEntry("intake", PHASER);
    assertThatIllegalArgumentException().isThrownBy(() -> phased("crank"));
    assertThatIllegalArgumentException().isThrownBy(() -> phased("nowhere"));
  }

  @Test
  void aValveIsOpenedByACamshaft() {
    Valve valve = new Valve("crank", 9, 232, 108, LiftLaw.POLYNOMIAL_345, 17, 6);
    Optional<Engine> engine = Optional.of(new Engine(78, 73, 128, 10.5, List.of(valve)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Model(Drives.answered(), engine, Map.of(), Optional.empty()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "two\nlines", "bell\u0007", "half\uD800"})
  void aTitleIsOneLineThatSaysSomething(String title) {
    Drive d = Drives.answered();
    Drive untitled = new Drive(title, d.about(), d.rotation(), d.shafts(), d.chains());
    assertThatIllegalArgumentException().isThrownBy(() -> Model.of(untitled));
  }
}
