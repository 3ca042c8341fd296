package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tightside.session.CountingWay;
import tightside.session.Edits;
import tightside.session.History;
import tightside.session.Snapshot;
import tightside.timing.Seat;

/** Counts typed on the card. What belongs there is printed in models/README.md: 51, 17, 50. */
class CountCardTest {

  private static Screen screen;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  @BeforeEach
  void nothingCounted() {
    screen.act(
        w -> {
          w.desk().open(Models.opened("two-cams-arm"));
          w.desk().look(look -> look.counting(CountingWay.MARK_TO_MARK));
          w.bench().turnTo(Bench.Card.COUNT);
        });
  }

  @Test
  void bothWaysOfCountingAreShown() {
    assertThat(screen.words())
        .contains("right: 51 links = 50 between")
        .contains("right: 17 links = 16 between")
        .contains("right: 50 links = 49 between");
  }

  @Test
  void rightCountsFit() {
    screen.type("count-main-crank", "51");
    screen.type("count-main-intake", "17");
    screen.type("count-main-exhaust", "50");
    assertThat(screen.sentence()).startsWith("Every count of main fits");
    assertThat(screen.words()).contains("Every count of main fits");
  }

  @Test
  void rightCountsFitBetweenThePaintedLinksToo() {
    screen.choose("Plain between");
    screen.type("count-main-crank", "50");
    screen.type("count-main-intake", "16");
    screen.type("count-main-exhaust", "49");
    assertThat(screen.sentence()).startsWith("Every count of main fits");
  }

  /** A sprocket one tooth ahead gains a link behind it and loses one before it. */
  @Test
  void aLinkMoreBeforeAndOneLessAfterIsASprocketOneToothAhead() {
    screen.type("count-main-crank", "51");
    screen.type("count-main-intake", "18");
    screen.type("count-main-exhaust", "49");
    assertThat(screen.sentence()).contains("the exhaust sprocket sits 1 tooth ahead");
  }

  /** The counts are of the engine, the angles of the drive as drawn: both are said. */
  @Test
  void aMiscountHidesNoSprocketThatIsSetOver() {
    screen.act(w -> w.desk().act(now -> Edits.reseat(now, new Seat("main", "exhaust"), 3)));
    screen.type("count-main-crank", "52");
    assertThat(screen.sentence())
        .startsWith("Caution: On main ")
        .endsWith("As drawn, the exhaust shaft stands 30.0 cam degrees (60.0 crank) advanced.");
    assertThat(screen.words()).contains("Caution: On main ");
  }

  @Test
  void countsThatFitAreNoCaution() {
    screen.type("count-main-crank", "51");
    assertThat(screen.words()).doesNotContain("Caution");
  }

  @Test
  void whatIsNotCountedStaysUnproved() {
    screen.type("count-main-intake", "17");
    assertThat(screen.words()).contains("Not proved on main");
  }

  @Test
  void strandsUnderTheCoverAreListedAndCanNotBeEntered() {
    screen.choose("Cover on");
    assertThat(screen.words()).contains("crank to intake\n", "under the cover");
    assertThat(screen.all()).noneMatch(n -> "count-main-crank".equals(n.getId()));
    assertThat(screen.all()).anyMatch(n -> "count-main-intake".equals(n.getId()));
  }

  @Test
  void whatIsNoCountIsRefusedInASentence() {
    screen.type("count-main-intake", "17.5");
    assertThat(screen.words()).contains("A count is a whole number, not 17.5.");
  }

  @Test
  void aCountIsUndoneAndDoneAgain() {
    Snapshot before = screen.now();
    screen.type("count-main-intake", "17");
    History done = Screen.on(() -> screen.window().desk().history());
    screen.control(KeyCode.Z);
    assertThat(screen.now()).isEqualTo(before);
    screen.control(KeyCode.Y);
    assertThat(screen.now()).isEqualTo(done.now());
  }
}
