package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.session.Snapshot;

/** Wear typed, drawn along and measured. The figures are the model's own page: 0.2 %, 17.96 mm. */
class WearCardTest {

  private static Screen screen;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  @BeforeEach
  void newChain() {
    screen.act(
        w -> {
          w.desk().open(Models.opened("two-cams-arm"));
          w.bench().turnTo(Bench.Card.WEAR);
        });
  }

  private static double stretch() {
    return screen.now().state().stretchOf("main");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"0.2", "0,2"})
  void typedStretchMovesThePlunger(String typed) {
    screen.type("stretch-main", typed);
    assertThat(stretch()).isEqualTo(0.2);
    assertThat(screen.words()).contains("The plunger of main is 18.0 mm out, 11 steps");
    assertThat(screen.sentence())
        .contains("The intake shaft stands 1.0 cam degrees (2.0 crank) retarded");
  }

  @Test
  void theSliderDoesTheSameAsTheField() {
    Slider slider = (Slider) screen.find("slider-main");
    screen.act(w -> slider.setValue(0.2));
    assertThat(stretch()).isEqualTo(0.2);
    screen.type("stretch-main", "0.5");
    assertThat(slider.getValue()).isEqualTo(0.5);
  }

  @Test
  void pastItsTravelTheWindowWarnsAndSaysWhereItRanOut() {
    screen.type("stretch-main", "1.2");
    assertThat(screen.sentence())
        .startsWith("The tensioner of main has run out")
        .contains("0.96 % stretch");
  }

  @Test
  void stretchOutOfRangeIsRefusedAndChangesNothing() {
    screen.type("stretch-main", "12");
    assertThat(stretch()).isZero();
    assertThat(screen.words()).contains("The stretch lies from 0 to 10 percent, not 12.");
  }

  /** Ten pitches of 8 mm are 80 mm; 80.4 mm is half a percent more. */
  @Test
  void aMeasuredLengthIsTakenAsStretch() {
    screen.type("length-main", "80,4");
    screen.fire("use-main");
    assertThat(stretch()).isBetween(0.4999, 0.5001);
    assertThat(screen.words()).contains("The chain is stretched by 0.50 %.");
  }

  /** 10 x 8 mm = 80 mm, and 0.96 % of that is 0.77 mm; of 20 links, about twice as much. */
  @Test
  void itSaysWhatACalliperReadsWhereTheTensionerRunsOut() {
    assertThat(screen.words())
        .contains(
            "Over 10 links a new chain measures 80.00 mm, and 80.77 mm where the tensioner runs"
                + " out.");
    screen.type("links-main", "20");
    assertThat(screen.words()).contains("measures 160.00 mm, and 161.53 mm where");
    screen.type("links-main", "none");
    assertThat(screen.words()).doesNotContain("a new chain measures");
    screen.type("links-main", "10");
  }

  @Test
  void anOddNumberOfPitchesIsRefused() {
    screen.type("links-main", "9");
    screen.type("length-main", "72.4");
    screen.fire("use-main");
    assertThat(stretch()).isZero();
    assertThat(screen.words()).contains("Measure over an even number of pitches");
  }

  @Test
  void aPlungerIsHeldAndLetGo() {
    screen.enter("hold-at-main", "0");
    assertThat(screen.now().heldMm()).containsEntry("main", 0.0);
    assertThat(screen.words()).contains("no angle holds until it is let go");
    screen.fire("free-main");
    assertThat(screen.now().heldMm()).isEmpty();
  }

  /** 14.2 mm is printed in models/README.md for the new chain. */
  @Test
  void theFieldToHoldAPlungerBeginsWhereThePlungerStands() {
    TextField field = (TextField) screen.find("hold-at-main");
    assertThat(field.getText()).isEqualTo("14.2");
    screen.type("stretch-main", "0.2");
    assertThat(field.getText()).isEqualTo("18.0");
    screen.type("hold-at-main", "5");
    screen.type("stretch-main", "0.3");
    assertThat(field.getText()).isEqualTo("5");
  }

  @Test
  void stretchIsUndoneAndDoneAgain() {
    Snapshot before = screen.now();
    screen.type("stretch-main", "0.3");
    Snapshot after = screen.now();
    screen.control(KeyCode.Z);
    assertThat(screen.now()).isEqualTo(before);
    screen.press(KeyCode.Z, true, true);
    assertThat(screen.now()).isEqualTo(after);
  }
}
