package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tightside.drive.Seen;
import tightside.session.Edits;
import tightside.session.SlackSetup;

/**
 * The card of the slack chain. The loop's 2.5 mm of slack and the rule of half a tooth (10 camshaft
 * degrees on 36 teeth) are the answered example's.
 */
class SlackCardTest {

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
          w.bench().turnTo(Bench.Card.SLACK);
        });
    screen.work();
  }

  @Test
  void thePageIsThereOnceTheWorkerIsDone() {
    assertThat(screen.words())
        .contains("2.5 mm of chain is left over in the whole loop")
        .contains("If intake must be turned more than 5.0 of its degrees to meet its dowel")
        .contains("hold it both ways")
        .contains("Together: exhaust and intake, 8.0 mm off its nose")
        .contains("most dangerous first")
        .contains("toward crank");
  }

  @Test
  void theOldPageStaysUntilTheNewOneIsThere() {
    screen.type("slack-engagement", "20");
    assertThat(screen.words()).contains("intake, 8.0 mm off its nose");
    screen.work();
    assertThat(screen.words()).contains("intake, 20.0 mm off its nose");
  }

  @Test
  void whatIsTypedIsUndone() {
    screen.type("slack-play", "2,5");
    assertThat(screen.now().slack().playDegrees()).hasValue(2.5);
    screen.type("slack-play", "");
    assertThat(screen.now().slack().playDegrees()).isEmpty();
    screen.type("slack-cold", "-10");
    assertThat(screen.now().slack().heat().coldCelsius()).isEqualTo(-10);
    screen.type("slack-hot", "110");
    screen.type("slack-block", "11");
    assertThat(screen.now().slack().heat().blockPerKelvin()).isEqualTo(11e-6);
    screen.act(w -> w.picture().requestFocus());
    for (int i = 0; i < 3; i++) {
      screen.control(KeyCode.Z);
    }
    assertThat(screen.now().slack()).isEqualTo(SlackSetup.usual());
    assertThat(((TextField) screen.find("slack-hot")).getText()).isEqualTo("90");
  }

  @Test
  void eachFieldSaysByItsNameWhatIsWrongInIt() {
    screen.type("slack-engagement", "-3");
    screen.type("slack-cold", "warm");
    screen.type("slack-hot", "95");
    assertThat(screen.words())
        .contains("Engagement on the nose, mm lies from 0 to 200 mm")
        .contains("Cold, degrees Celsius: \"warm\" is no number");
  }

  @Test
  void theRuleForTheDowelIsReadWhereTheSprocketGoesBackOn() {
    String words = screen.words();
    assertThat(words.indexOf("to meet its dowel"))
        .isGreaterThan(words.indexOf("Taking a sprocket off"))
        .isLessThan(words.indexOf("Pressing the tensioner back"));
  }

  @Test
  void onlyRunsThatCanBeReachedAreFeltByThumb() {
    screen.act(w -> w.desk().act(now -> Edits.cover(now, Seen.COVER_ON)));
    screen.work();
    String words = screen.words();
    String thumb =
        words.substring(words.indexOf("By thumb"), words.indexOf("What could go wrong, most"));
    assertThat(thumb).contains("from intake to exhaust").doesNotContain("from exhaust to crank");
  }

  @Test
  void nonsenseIsRefusedAndChangesNothing() {
    screen.type("slack-engagement", "-3");
    assertThat(screen.words()).contains("Engagement on the nose, mm lies from 0 to 200 mm");
    assertThat(screen.now().slack()).isEqualTo(SlackSetup.usual());
  }
}
