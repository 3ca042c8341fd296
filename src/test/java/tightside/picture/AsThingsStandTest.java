package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Seen;
import tightside.geometry.Curve;
import tightside.timing.Drives;
import tightside.timing.Seat;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * What a picture says of a chain that nothing holds, that was turned back, set over, covered, or
 * whose paint has gone on. On the answered drive the tensioner runs out at about 1 % of stretch.
 */
class AsThingsStandTest {

  private static final State RIGHT = State.reference();
  private static final PictureOptions LABELLED = PictureOptions.labelled(Optional.empty(), 1);

  private static Solution solved(State state) {
    return Solver.solve(Drives.answered(), state);
  }

  private static List<String> words(State state, PictureOptions options) {
    return Scenes.shapes(DrivePicture.of(solved(state), options), Shape.Text.class).stream()
        .map(Shape.Text::words)
        .toList();
  }

  private static List<Vector2D> pins(State state) {
    return Scenes.shapes(
            DrivePicture.of(solved(state), LABELLED.withoutWords()), Shape.Circle.class, Ink.PIN)
        .stream()
        .map(Shape.Circle::centre)
        .toList();
  }

  /** What is over is drawn: from pin to pin the way round is as long as the chain is. */
  @Test
  void aChainThatIsLeftOverHangs_andIsAsLongAsItIs() {
    Solution loose = solved(RIGHT.stretched("main", 1.3));
    double over = loose.chains().get(0).tensioner().orElseThrow().slackLeftMm();
    assertThat(over).isGreaterThan(1);
    List<Vector2D> pins = pins(RIGHT.stretched("main", 1.3));
    double round = 0;
    for (int i = 0; i < pins.size(); i++) {
      round += pins.get(i).distance(pins.get((i + 1) % pins.size()));
    }
    double pitch = loose.chains().get(0).fit().path().orElseThrow().pitchMm();
    assertThat(round).isEqualTo(118 * pitch, within(0.2 * over));
  }

  @Test
  void theLineOfAHangingRunIsTheLineOfItsLinks() {
    Picture picture = DrivePicture.of(solved(RIGHT.stretched("main", 5)), LABELLED);
    Shape.Run line = Scenes.shapes(picture, Shape.Run.class, Ink.SLACK).get(0);
    List<Vector2D> pins = pins(RIGHT.stretched("main", 5));
    for (Curve piece : line.curves()) {
      assertThat(pins).anyMatch(pin -> pin.distance(piece.to()) < 8.5);
    }
  }

  @ParameterizedTest
  @CsvSource({"0.5, slack side, tight side", "5, slack: nothing holds it, tight only while pulled"})
  void whetherATensionerHoldsIsSaid(double percent, String slack, String tight) {
    assertThat(words(RIGHT.stretched("main", percent), LABELLED)).contains(slack, tight);
  }

  @Test
  void heldBackNothingIsTight() {
    assertThat(words(RIGHT.held("main", 0), LABELLED))
        .contains("slack: nothing holds it", "not held tight")
        .doesNotContain("tight side", "slack side");
  }

  @Test
  void turnedBackThePulledSideIsTheTensioners() {
    State back = RIGHT.turnedTo(-3, State.Arrived.BACKWARD);
    Picture picture = DrivePicture.of(solved(back), LABELLED);
    assertThat(words(back, LABELLED)).containsOnlyOnce("now pulled").contains("now loose");
    assertThat(Scenes.shapes(picture, Shape.Run.class, Ink.TIGHT)).hasSize(1);
    assertThat(Scenes.shapes(picture, Shape.Run.class, Ink.SLACK)).hasSize(2);
  }

  /** The paint stays on its links: where the exhaust is a tooth ahead 49 lie between, not 48. */
  @Test
  void setOver_theDrawnPaintIsCountedToo() {
    State over = RIGHT.reseated(new Seat("main", "exhaust"), 1);
    assertThat(words(over, LABELLED))
        .contains("49 links", "48 between", "painted: 49 between")
        .contains("18 links", "17 between", "painted: 16 between");
    assertThat(DrivePicture.of(solved(over), LABELLED).description())
        .contains("48 between, painted: 49 between");
    assertThat(words(over, LABELLED.paintedWith(over.reseats())))
        .noneMatch(line -> line.startsWith("painted"));
  }

  /** 36 links further on after two turns, together again after 118: the answered example. */
  @Test
  void afterTwoTurnsThePaintSaysWhereItHasGone() {
    assertThat(words(RIGHT.turnedTo(720, State.Arrived.FORWARD), LABELLED))
        .contains("painted links", "36 of 118 further on", "at the marks after 118 turns");
    assertThat(words(RIGHT.turnedTo(118 * 360, State.Arrived.FORWARD), LABELLED))
        .contains("painted links", "at the marks again");
    assertThat(words(RIGHT.turnedTo(700, State.Arrived.FORWARD), LABELLED))
        .doesNotContain("painted links");
  }

  /** Everything of this drive takes the cover off, as nothing else is said of it. */
  @Test
  void whatCantBeSeenIsVeiledAndSaid() {
    Picture covered = DrivePicture.of(solved(RIGHT), LABELLED.seenWith(Seen.COVER_ON));
    assertThat(veils(covered)).isNotEmpty();
    assertThat(words(RIGHT, LABELLED.seenWith(Seen.COVER_ON)))
        .contains("tight, under the cover", "slack, under the cover");
    assertThat(covered.description())
        .contains("under the cover", "Marks of main that can't be seen: crank, intake, exhaust.");
    assertThat(veils(DrivePicture.of(solved(RIGHT), LABELLED.seenWith(Seen.COVER_OFF)))).isEmpty();
  }

  @Test
  void theVeilStandsStillWhileAllTurns() {
    PictureOptions covered = LABELLED.seenWith(Seen.COVER_ON);
    Picture still = DrivePicture.of(solved(RIGHT), covered);
    Picture turned = DrivePicture.of(solved(RIGHT.turnedTo(77, State.Arrived.FORWARD)), covered);
    assertThat(veils(turned)).isEqualTo(veils(still));
  }

  private static List<Shape> veils(Picture picture) {
    return picture.shapes().stream()
        .filter(s -> s.tag().ink() == Ink.VEIL || s.tag().ink() == Ink.VEIL_STROKE)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1.3, 1.7, 2.1})
  void noLineOfALabelRunsThroughWords(double scale) {
    Picture picture =
        DrivePicture.of(solved(RIGHT), PictureOptions.labelled(Optional.empty(), scale));
    List<Shape.Text> texts = Scenes.shapes(picture, Shape.Text.class);
    for (Shape.Run leader : Scenes.shapes(picture, Shape.Run.class, Ink.LEADER)) {
      Curve line = leader.curves().get(0);
      for (double at = 0; at <= 1; at += 0.02) {
        Vector2D point = line.from().lerp(line.to(), at);
        assertThat(texts).noneMatch(text -> text.bounds().touchedBy(point, 0.01));
      }
    }
  }
}
