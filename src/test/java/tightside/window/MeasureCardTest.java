package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.session.Edits;
import tightside.session.PlanEdits;
import tightside.session.Proof;
import tightside.session.Snapshot;
import tightside.session.StrandId;
import tightside.survey.Measurement;
import tightside.survey.Survey;

/** The card of a measured drive. Its counts are the answered example's: 51, 17 and 50 links. */
class MeasureCardTest {

  private static Screen screen;

  private static Snapshot measured() {
    return Opening.opened(
        ModelReader.read(Models.file("measured-two-cams")).model().orElseThrow(), "measured");
  }

  @BeforeAll
  static void open() {
    screen = new Screen(measured());
  }

  @BeforeEach
  void anew() {
    screen.act(
        w -> {
          w.desk().open(measured());
          w.bench().turnTo(Bench.Card.MEASURE);
        });
  }

  private static void enter(String id, String text) {
    screen.act(
        w -> {
          TextField field = (TextField) screen.find(id);
          field.setText(text);
          field.getOnAction().handle(null);
        });
    screen.work();
  }

  @Test
  void saysHowSureCountsAreAndThatNothingIsProved() {
    assertThat(screen.words())
        .contains("50 links, ")
        .contains("exhaust to crank: 50 links, more than 99.9 % sure")
        .contains("Caution: measured, not proved")
        .contains("No single measurement stands out");
  }

  @Test
  void aBlunderIsNamedAndUndone() {
    enter("measure-1", "332");
    assertThat(screen.now().measured().orElseThrow().suspect().orElseThrow().place()).isOne();
    assertThat(screen.words()).contains("Probably wrong: over crank and exhaust");
    screen.act(w -> w.picture().requestFocus());
    screen.control(KeyCode.Z);
    assertThat(screen.now().measured().orElseThrow().suspect()).isEmpty();
    assertThat(((TextField) screen.find("measure-1")).getText()).isEqualTo("337");
  }

  @Test
  void aMeasurementIsAdded() {
    int before = screen.now().measured().orElseThrow().measurements().size();
    screen.act(w -> ((ComboBox<?>) screen.find("measure-what")).getSelectionModel().select(0));
    enter("measure-read", "nonsense");
    assertThat(screen.now().measured().orElseThrow().measurements()).hasSize(before);
    enter("measure-read", "4,5");
    assertThat(screen.now().measured().orElseThrow().measurements()).hasSize(before + 1);
  }

  @Test
  void aDriveThatWasDrawnSaysThatNothingWasMeasured() {
    screen.act(
        w -> {
          w.desk().open(Models.opened("two-cams-arm"));
          w.bench().turnTo(Bench.Card.MEASURE);
        });
    assertThat(screen.words()).contains("Nothing was measured on this drive");
  }

  private static void count(String from, String to, String links) {
    screen.act(w -> w.desk().act(now -> Edits.count(now, new StrandId("main", from, to), links)));
  }

  /** The example has 17 links of intake to exhaust counted already. */
  @Test
  void countsTypedOnTheCardCountProveIt() {
    assertThat(Proof.isOpen(screen.now())).isTrue();
    count("crank", "intake", "51");
    count("exhaust", "crank", "51");
    assertThat(Proof.isOpen(screen.now())).isTrue();
    assertThat(screen.words()).contains("Typed on the card Count: 51. Count again");
    count("exhaust", "crank", "50");
    assertThat(Proof.isOpen(screen.now())).isFalse();
    assertThat(screen.words()).contains("Proved: counts on the engine agree");
    assertThat(Proof.withCounts(screen.now()).orElseThrow().counted()).hasSize(3);
  }

  @Test
  void aLineIsTakenAwayAndItsUncertaintyTyped() {
    int before = screen.now().measured().orElseThrow().measurements().size();
    enter("measure-sigma-0", "0,8");
    assertThat(first().reading().sigma()).isEqualTo(0.8);
    screen.act(w -> ((Button) screen.find("measure-remove-0")).fire());
    screen.work();
    assertThat(screen.now().measured().orElseThrow().measurements()).hasSize(before - 1);
  }

  private static Measurement first() {
    return screen.now().survey().orElseThrow().measurements().get(0);
  }

  /** The arm is gone, and with it what was measured on it and the plunger; the rest stays. */
  @Test
  void drawingOtherwiseKeepsWhatWasMeasuredOfThePartsThatRemain(@TempDir Path folder)
      throws IOException {
    screen.act(w -> w.desk().act(now -> PlanEdits.deleteEntry(now, "main", 1)));
    Survey left = screen.now().survey().orElseThrow();
    assertThat(screen.now().measured()).isEmpty();
    assertThat(left.measurements()).hasSize(17);
    assertThat(Proof.isOpen(screen.now())).isTrue();
    Path file = folder.resolve("kept.yaml");
    screen.act(
        w -> {
          w.bench().saveAs(name -> Optional.of(file));
          ((Button) screen.find("measure-save")).fire();
        });
    screen.work();
    Model saved = ModelReader.read(file).model().orElseThrow();
    assertThat(saved.measured().orElseThrow().survey().measurements())
        .isEqualTo(left.measurements());
    screen.act(w -> ((Button) screen.find("measure-again")).fire());
    screen.work();
    assertThat(screen.now().measured().orElseThrow().survey()).isEqualTo(left);
  }
}
