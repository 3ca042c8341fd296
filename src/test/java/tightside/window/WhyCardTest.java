package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tightside.drive.Seen;
import tightside.reasoning.Cheap;
import tightside.reasoning.Condition;
import tightside.reasoning.Reading;
import tightside.session.WhyForm;

/**
 * The card Why. At 0.5 % the answered example's camshafts stand 5.06 and 3.76 crank degrees late.
 */
class WhyCardTest {

  private static Screen screen;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  @BeforeEach
  void nothingRead() {
    screen.act(
        w -> {
          w.desk().open(Models.opened("two-cams-arm"));
          w.bench().turnTo(Bench.Card.WHY);
        });
    screen.work();
  }

  @Test
  void readingsAreExplainedAtOnceAndUndone() {
    assertThat(screen.words()).contains("Nothing was read yet");
    screen.type("why-intake", "-5,1");
    screen.type("why-exhaust", "-3.8");
    screen.type("why-plunger-main", "22.5");
    screen.work();
    assertThat(screen.words())
        .contains("chain main is worn, by 0.5")
        .contains("What would settle it")
        .contains("rings: one and two spreads");
    screen.control(KeyCode.Z);
    screen.work();
    assertThat(screen.now().why().of("why-plunger-main")).isEmpty();
    assertThat(screen.now().why().of("why-exhaust")).isEqualTo("-3.8");
  }

  @Test
  void whatCantBeReadIsSaidAndKept() {
    screen.type("why-intake", "late");
    screen.type("why-tool-exhaust", "perhaps");
    screen.work();
    assertThat(screen.now().why().of("why-intake")).isEqualTo("late");
    assertThat(screen.words()).contains("type yes or no");
  }

  @Test
  void everyKindOfReadingHasAField() {
    screen.type("why-spread-exhaust", "0.5");
    screen.type("why-edges-exhaust", "-7; -6,8 -7.1");
    screen.type("why-calliper-main", "80.4");
    screen.type("why-looked-oil", "good");
    screen.type("why-raised-exhaust", "-7.2");
    screen.work();
    List<Reading> readings = WhyForm.of(screen.now()).evidence().readings();
    assertThat(readings)
        .containsExactly(
            new Reading.CamAngle("exhaust", -7.2, 0.5, Condition.RAISED_SPEED, false),
            new Reading.CamEdges("exhaust", List.of(-7.0, -6.8, -7.1), 0.5, Condition.HOT_IDLE),
            new Reading.Calliper("main", 10, 80.4, 0.05),
            new Reading.Looked(Cheap.OIL, false));
    screen.type("why-pitches-main", "9");
    screen.work();
    assertThat(screen.words()).contains("measure over an even number");
  }

  @Test
  void accessAndAnEngineTurnedByHandChangeThePlan() {
    screen.fire("why-turned");
    screen.type("why-opening-cover-off", "60");
    screen.work();
    assertThat(WhyForm.of(screen.now()).plan().turnedByHand()).isTrue();
    assertThat(WhyForm.of(screen.now()).plan().opening()).containsEntry(Seen.COVER_OFF, 60.0);
  }

  @Test
  void aTickIsUndone() {
    screen.fire("why-turned");
    assertThat(((CheckBox) screen.find("why-turned")).isSelected()).isTrue();
    screen.control(KeyCode.Z);
    assertThat(((CheckBox) screen.find("why-turned")).isSelected()).isFalse();
    assertThat(WhyForm.of(screen.now()).plan().turnedByHand()).isFalse();
  }

  @Test
  void aReadingCanHaveASpreadOfItsOwn() {
    screen.type("why-spread-exhaust", "0.5");
    screen.type("why-exhaust", "-7,2 sd 0,4");
    screen.type("why-unplugged-exhaust", "-7 \u00b1 0.8");
    screen.type("why-raised-exhaust", "-7.1");
    assertThat(WhyForm.of(screen.now()).evidence().readings())
        .containsExactly(
            new Reading.CamAngle("exhaust", -7.2, 0.4, Condition.HOT_IDLE, false),
            new Reading.CamAngle("exhaust", -7, 0.8, Condition.PHASER_UNPLUGGED, false),
            new Reading.CamAngle("exhaust", -7.1, 0.5, Condition.RAISED_SPEED, false));
    screen.type("why-exhaust", "-7 sd much");
    assertThat(WhyForm.of(screen.now()).refusals()).containsKey("why-exhaust");
    assertThat(WhyForm.of(screen.now()).evidence().readings()).hasSize(2);
  }

  @Test
  void priorsAreThePersons() {
    screen.type("why-intake", "0");
    screen.type("why-exhaust", "-20");
    screen.work();
    assertThat(screen.words())
        .contains("the sprocket of exhaust sits 1 tooth behind")
        .contains("Do not crank or run this engine");
    screen.type("why-prior-reseat", "0");
    screen.work();
    assertThat(screen.words()).doesNotContain("the sprocket of exhaust sits 1 tooth behind");
  }

  @Test
  void thePageIsSaved(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("why.html");
    screen.act(w -> w.bench().saveAs(name -> Optional.of(file)));
    screen.type("why-exhaust", "-7");
    screen.work();
    screen.fire("why-save");
    screen.work();
    assertThat(Files.readString(file)).contains("exhaust reads -7.0 crank degrees");
    assertThat(screen.words()).contains("Saved as why.html.");
  }
}
