package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Whether everything can still be told apart where colour is lost. */
class StylesTest {

  @ParameterizedTest
  @EnumSource(Ink.class)
  void everyInkHasALookInBothPlanes(Ink ink) {
    for (Plane plane : Plane.values()) {
      Style style = Styles.of(ink, plane);
      assertThat(style).isNotNull();
      assertThat(style.fill().isPresent() || style.line().isPresent()).isTrue();
    }
  }

  /** Contrast ratios of the Web Content Accessibility Guidelines: white on black is 21 : 1. */
  @Test
  void contrastIsMeasuredAsTheGuidelinesDo() {
    assertThat(Rgb.of(0xFFFFFF).contrast(Rgb.of(0))).isCloseTo(21, within(1e-9));
    // From memory: #767676 is the lightest grey that reaches 4.5 : 1 on white.
    assertThat(Rgb.of(0x767676).contrast(Rgb.of(0xFFFFFF))).isBetween(4.5, 4.6);
    assertThat(Rgb.of(0x777777).contrast(Rgb.of(0xFFFFFF))).isLessThan(4.5);
  }

  /** Text: 7 : 1, the guidelines' enhanced contrast (1.4.6), on paper and on a sprocket. */
  @ParameterizedTest
  @EnumSource(
      value = Ink.class,
      names = {"COUNT", "LABEL", "WARNING"})
  void wordsAreReadOnPaperAndOnSprockets(Ink ink) {
    Rgb letters = Styles.of(ink, Plane.FRONT).fill().orElseThrow();
    assertThat(letters.contrast(Styles.PAPER)).isGreaterThan(7);
    assertThat(letters.contrast(fill(Ink.SPROCKET))).isGreaterThan(7);
    assertThat(letters.contrast(fill(Ink.ERROR).mixed(fill(Ink.SPROCKET), 0.45)))
        .isGreaterThan(4.5);
  }

  /** Signs: 3 : 1, the guidelines' contrast of graphics (1.4.11), where one lies on the other. */
  @ParameterizedTest
  @CsvSource({
    "MARK, SPROCKET",
    "DIMENSION, SPROCKET",
    "TIGHT, OUTER_PLATE",
    "TIGHT, INNER_PLATE",
    "TIGHT, TOOTHED_PLATE",
    "SLACK, INNER_PLATE",
    "PAINT_STRIPE, PAINTED_LINK",
    "FACE, GUIDE_BODY",
    "FACE, ARM_BODY",
    "RATCHET_STEP, PLUNGER",
    "TURNING, SPROCKET"
  })
  void signsStandOutFromWhatTheyLieOn(Ink sign, Ink ground) {
    assertThat(strongest(sign).contrast(fill(ground))).isGreaterThan(3);
  }

  @ParameterizedTest
  @EnumSource(
      value = Ink.class,
      names = {
        "POINTER",
        "GHOST",
        "NO_CHAIN",
        "LEADER",
        "TOOTH",
        "INNER_PLATE",
        "OUTER_PLATE",
        "GUIDE_BODY",
        "ARM_EDGE",
        "PLUNGER_BODY",
        "PLUNGER",
        "GROUND",
        "PIN"
      })
  void edgesStandOutFromThePaper(Ink ink) {
    assertThat(strongest(ink).contrast(Styles.PAPER)).isGreaterThan(3);
  }

  /** Areas side by side differ in value; 1.25 : 1 is seen where both have an edge of their own. */
  @ParameterizedTest
  @CsvSource({
    "INNER_PLATE, OUTER_PLATE",
    "PAINTED_LINK, OUTER_PLATE",
    "OUTER_PLATE, SPROCKET",
    "PLUNGER, PLUNGER_BODY",
    "PIN, OUTER_PLATE",
    "MARK, GHOST",
    "GUIDE_BODY, OUTER_PLATE",
    "ARM_BODY, OUTER_PLATE",
    "ERROR, SPROCKET"
  })
  void neighboursDifferInGrey(Ink one, Ink other) {
    assertThat(fill(one).contrast(fill(other))).isGreaterThan(1.25);
  }

  @Test
  void tightAndSlackDifferInDashAndWeight() {
    Style tight = Styles.of(Ink.TIGHT, Plane.FRONT);
    Style slack = Styles.of(Ink.SLACK, Plane.FRONT);
    assertThat(tight.dash()).isEmpty();
    assertThat(slack.dash()).isNotEmpty();
  }

  /** Value alone would not do: a painted link is as light as an inner plate, but has stripes. */
  @Test
  void aPaintedLinkHasAHeavierEdgeThanAnyOther() {
    for (Ink plate : new Ink[] {Ink.INNER_PLATE, Ink.OUTER_PLATE, Ink.TOOTHED_PLATE}) {
      assertThat(Styles.of(Ink.PAINTED_LINK, Plane.FRONT).weight())
          .isGreaterThan(1.5 * Styles.of(plate, Plane.FRONT).weight());
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Ink.class,
      names = {"OUTER_PLATE", "TOOTH", "TIGHT", "MARK"})
  void theBackIsLighterAndStillSeen(Ink ink) {
    Optional<Rgb> front = Styles.of(ink, Plane.FRONT).line();
    Optional<Rgb> back = Styles.of(ink, Plane.BACK).line();
    assertThat(back.orElseThrow().luminance()).isGreaterThan(front.orElseThrow().luminance());
    assertThat(back.get().contrast(Styles.PAPER)).isGreaterThan(2);
  }

  private static Rgb fill(Ink ink) {
    return Styles.of(ink, Plane.FRONT).fill().orElseThrow();
  }

  private static Rgb strongest(Ink ink) {
    Style style = Styles.of(ink, Plane.FRONT);
    return style.line().or(style::fill).orElseThrow();
  }
}
