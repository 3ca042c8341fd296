package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A drive that is counted only on every card: what it says, or what it would take. */
class CountedOnlyWindowTest {

  private static Screen screen() {
    return new Screen(Models.opened("counted-by-hand"));
  }

  @ParameterizedTest
  @EnumSource(Bench.Card.class)
  void everyCardShowsItAndSaysThatItIsCountedOnly(Bench.Card card) {
    Screen screen = screen();
    screen.act(w -> w.bench().turnTo(card));
    screen.work();
    screen.act(w -> {});
    assertThat(screen.words()).contains("counted only: no geometry");
  }

  @Test
  void thePictureSaysThatItIsASchematic() {
    Screen screen = screen();
    screen.act(w -> w.picture().layout());
    assertThat(screen.window().picture().picture().orElseThrow().description())
        .startsWith("Schematic: not to scale");
  }

  @Test
  void aTooLargeStretchNamesTheMeasurementsAndCountsAreJudged() {
    Screen screen = screen();
    screen.type("count-main-crank", "56");
    screen.type("count-main-intake", "16");
    screen.type("count-main-exhaust", "56");
    assertThat(screen.sentence()).contains("exhaust").contains("1 tooth behind");
    screen.act(w -> w.bench().turnTo(Bench.Card.WEAR));
    screen.type("stretch-main", "0.2");
    assertThat(screen.words()).contains("need the shafts' places");
  }

  @Test
  void theSchematicTurnsUnderTheHand() {
    Screen screen = screen();
    screen.press(javafx.scene.input.KeyCode.RIGHT);
    screen.act(w -> w.picture().layout());
    assertThat(screen.now().crank().degrees()).isNotZero();
  }
}
