package tightside.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.drive.Seen;
import tightside.picture.Ink;
import tightside.picture.Picture;
import tightside.picture.Shape;
import tightside.timing.Seat;
import tightside.timing.State;

/**
 * A lesson shows what its access allows: two faults that look the same by it give the same lesson,
 * shape by shape and word by word, so nothing in it can tell them apart.
 */
class NothingLeaksTest {

  private static final Setting TWO_CAMS = Lessons.setting("two-cams-arm");
  private static final Setting V_SIX = Lessons.setting("v-six-two-stages");

  private static LessonSheet sheet(Setting setting, State state, Seen access) {
    return new LessonSheet(
        new LessonSheet.Outline(
            "hunt", "Find the fault", access, false, Optional.empty(), Optional.empty()),
        setting,
        Truth.of(setting, state, Quantity.CRANK_DEGREES, new Margin(0.5, 0.4)));
  }

  private static State tooth(String chain, String shaft, int teeth) {
    return State.reference().reseated(new Seat(chain, shaft), teeth);
  }

  private static List<Object> all(LessonSheet sheet) {
    Picture picture = sheet.picture(1);
    return List.of(
        sheet.toString(),
        sheet.memoryName(),
        sheet.title(),
        sheet.story(),
        sheet.ask(),
        sheet.belongs(),
        sheet.seen(),
        sheet.spoken(),
        sheet.shafts(),
        sheet.quantity(),
        sheet.margin().words(),
        picture.shapes(),
        picture.title(),
        picture.description(),
        picture.bounds());
  }

  /** With the cover on, nothing of the balancers and of their chain can be seen. */
  @Test
  void faultsThatCanNotBeSeenGiveTheSameLessonToTheLastShape() {
    Setting balancers = Lessons.setting("counterclockwise-balancers");
    List<Object> right = all(sheet(balancers, State.reference(), Seen.COVER_ON));
    for (State state :
        List.of(
            tooth("balance", "right-balancer", 1),
            tooth("balance", "left-balancer", -2),
            State.reference().stretched("balance", 0.4))) {
      assertThat(all(sheet(balancers, state, Seen.COVER_ON))).isEqualTo(right);
      assertThat(all(sheet(balancers, state, Seen.BORESCOPE))).isNotEqualTo(right);
    }
  }

  @Test
  void ofAStageBehindTheCoverEverythingIsDrawnAsIfItWereRight() {
    Set<Shape> right = hidden(sheet(V_SIX, State.reference(), Seen.COVER_ON));
    assertThat(right).isNotEmpty();
    assertThat(hidden(sheet(V_SIX, tooth("first", "left-idler", 1), Seen.COVER_ON)))
        .isEqualTo(right);
    assertThat(hidden(sheet(V_SIX, State.reference().stretched("first", 0.5), Seen.COVER_ON)))
        .isEqualTo(right);
  }

  /** What is drawn of the parts that can't be seen: idlers, their marks, plungers and arms. */
  private static Set<Shape> hidden(LessonSheet sheet) {
    return sheet.picture(1).shapes().stream()
        .filter(s -> s.tag().part().toString().contains("first"))
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @CsvSource({"exhaust, -1", "intake, 1", "exhaust, 3"})
  void thePictureJudgesNothing(String shaft, int teeth) {
    Picture picture = sheet(TWO_CAMS, tooth("main", shaft, teeth), Seen.COVER_OFF).picture(1);
    assertThat(picture.shapes())
        .extracting(s -> s.tag().ink())
        .doesNotContain(
            Ink.ERROR, Ink.GHOST, Ink.DIMENSION, Ink.WARNING, Ink.POINTER, Ink.TIGHT, Ink.SLACK);
    assertThat(texts(picture))
        .isEqualTo(texts(sheet(TWO_CAMS, State.reference(), Seen.COVER_OFF).picture(1)));
    assertThat(String.join(" ", texts(picture)) + picture.description())
        .doesNotContain("advanced")
        .doesNotContain("retarded")
        .doesNotContain("timing")
        .doesNotContain("\u00b0");
  }

  private static List<String> texts(Picture picture) {
    return picture.shapes().stream()
        .filter(Shape.Text.class::isInstance)
        .map(s -> ((Shape.Text) s).words())
        .toList();
  }

  /** With the cover on a person sees the run between the camshafts and no other link. */
  @Test
  void linksThatTheCoverHidesAreNotDrawn() {
    Picture on = sheet(TWO_CAMS, State.reference(), Seen.COVER_ON).picture(1);
    Picture off = sheet(TWO_CAMS, State.reference(), Seen.COVER_OFF).picture(1);
    assertThat(rollers(off)).isEqualTo(118);
    assertThat(rollers(on)).isBetween(17L, 60L);
    assertThat(marks(on)).isEqualTo(2);
    assertThat(marks(off)).isEqualTo(3);
  }

  private static long rollers(Picture picture) {
    return inks(picture, Ink.ROLLER);
  }

  private static long marks(Picture picture) {
    return inks(picture, Ink.MARK);
  }

  private static long inks(Picture picture, Ink ink) {
    return picture.shapes().stream().filter(s -> s.tag().ink() == ink).count();
  }

  /** A plunger that can't be seen stands where it would stand if all were right. */
  @Test
  void wearBehindTheCoverMovesNothingThatIsDrawn() {
    Picture worn =
        sheet(TWO_CAMS, State.reference().stretched("main", 0.4), Seen.COVER_ON).picture(1);
    Picture fresh = sheet(TWO_CAMS, State.reference(), Seen.COVER_ON).picture(1);
    for (Ink ink : List.of(Ink.ARM_BODY, Ink.PLUNGER, Ink.FACE, Ink.RATCHET_STEP)) {
      assertThat(of(worn, ink)).as(ink.name()).isEqualTo(of(fresh, ink));
    }
  }

  private static List<Shape> of(Picture picture, Ink ink) {
    return picture.shapes().stream().filter(s -> s.tag().ink() == ink).toList();
  }
}
