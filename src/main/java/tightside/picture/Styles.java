package tightside.picture;

import java.util.EnumMap;
import java.util.Map;

/**
 * The one table of how everything looks. Steel is blue-grey, sprockets are sand, what rubs is
 * green, paint is amber, marks are crimson; but every kind is also told by value, line weight, dash
 * or hatch, so that a grey print says the same.
 */
public final class Styles {

  /** The ground on which a picture is drawn. */
  public static final Rgb PAPER = Rgb.of(0xFBFAF6);

  /** How far the back plane fades into the paper. */
  private static final double FADE = 0.42;

  private static final int DARK = 0x1D2930;

  private static final Map<Ink, Style> FRONT = front();
  private static final Map<Ink, Style> BACK = back();

  private Styles() {}

  public static Style of(Tag tag) {
    return of(tag.ink(), tag.plane());
  }

  public static Style of(Ink ink, Plane plane) {
    return (plane == Plane.FRONT ? FRONT : BACK).get(ink);
  }

  private static Map<Ink, Style> back() {
    Map<Ink, Style> styles = new EnumMap<>(Ink.class);
    FRONT.forEach((ink, style) -> styles.put(ink, style.faded(PAPER, FADE)));
    return styles;
  }

  private static Map<Ink, Style> front() {
    Map<Ink, Style> styles = new EnumMap<>(Ink.class);
    faces(styles);
    sprockets(styles);
    chain(styles);
    timing(styles);
    charts(styles);
    cylinder(styles);
    words(styles);
    return styles;
  }

  private static void faces(Map<Ink, Style> styles) {
    styles.put(Ink.GUIDE_BODY, Style.filled(0xD5DECF).edged(0x4B6350, 0.9));
    styles.put(Ink.GROUND, Style.lined(0x4B6350, 0.9));
    styles.put(Ink.ARM_EDGE, Style.filled(0x4B6350).edged(0x4B6350, 1.8));
    styles.put(Ink.ARM_BODY, Style.filled(0xBFD0BC));
    styles.put(Ink.FACE, Style.lined(0x24402E, 2.6));
    styles.put(Ink.PIVOT, Style.filled(0xFBFAF6).edged(0x24402E, 1.2));
    styles.put(Ink.PLUNGER_BODY, Style.filled(0xB4B6B2).edged(DARK, 1));
    styles.put(Ink.PLUNGER, Style.filled(0xF4F4F0).edged(DARK, 1));
    styles.put(Ink.RATCHET_STEP, Style.lined(DARK, 0.9));
  }

  private static void sprockets(Map<Ink, Style> styles) {
    styles.put(Ink.SPROCKET, Style.filled(0xEDE3CF));
    styles.put(Ink.TOOTH, Style.filled(0xEDE3CF).edged(0x6A5A3C, 1));
    styles.put(Ink.SHAFT, Style.filled(0xD9CBAE).edged(0x6A5A3C, 1));
  }

  private static void chain(Map<Ink, Style> styles) {
    styles.put(Ink.ROLLER, Style.filled(0xFBFAF6).edged(0x48575F, 0.8));
    styles.put(Ink.INNER_PLATE, Style.filled(0xE6ECEE).edged(0x48575F, 0.9).clear(0.78));
    styles.put(Ink.OUTER_PLATE, Style.filled(0x8FA5B1).edged(0x2C3940, 0.9).clear(0.88));
    styles.put(Ink.CRANKED_PLATE, Style.filled(0xB9C6CC).edged(DARK, 1.4));
    styles.put(Ink.CRANK_BEND, Style.lined(DARK, 1));
    styles.put(Ink.TOOTHED_PLATE, Style.filled(0xB7C5CC).edged(0x34424A, 0.8).clear(0.85));
    styles.put(Ink.PAINTED_LINK, Style.filled(0xFFC72E).edged(DARK, 1.8));
    styles.put(Ink.PAINT_STRIPE, Style.lined(DARK, 1.4));
    styles.put(Ink.TIGHT, Style.lined(0x0B3C49, 3.2));
    styles.put(Ink.SLACK, Style.lined(0xA33A14, 3).dashed(6, 4));
    styles.put(Ink.PIN, Style.filled(0xFBFAF6).edged(0x34424A, 0.8));
    styles.put(Ink.NO_CHAIN, Style.lined(0x48575F, 1.4).dashed(9, 5));
  }

  private static void timing(Map<Ink, Style> styles) {
    styles.put(Ink.MARK, Style.filled(0xB3152B).edged(DARK, 0.8));
    styles.put(Ink.POINTER, Style.filled(DARK));
    styles.put(Ink.GHOST, Style.filled(0xFBFAF6).edged(0xB3152B, 1.2).dashed(3, 2));
    styles.put(Ink.ERROR, Style.filled(0xE88C7D).clear(0.55));
    styles.put(Ink.TURNING, Style.lined(0x6A5A3C, 1.6));
    styles.put(Ink.DIMENSION, Style.lined(0xB3152B, 1.3));
    styles.put(Ink.VEIL, Style.filled(0xD9D6CB).edged(0x66717A, 1).clear(0.8));
    styles.put(Ink.VEIL_STROKE, Style.lined(0x66717A, 0.8));
    styles.put(Ink.LEADER, Style.filled(0x48575F).edged(0x48575F, 0.8));
  }

  private static void charts(Map<Ink, Style> styles) {
    styles.put(Ink.SCALE, Style.lined(0x8A9299, 0.8));
    styles.put(Ink.NOUGHT, Style.lined(DARK, 2.2));
    styles.put(Ink.BEYOND, Style.lined(0x77828A, 0.9));
    styles.put(Ink.CURVE, Style.lined(0xB3152B, 3.4));
    styles.put(Ink.CURVE_BEFORE, Style.lined(DARK, 1.5).dashed(7, 4));
    styles.put(Ink.CURVE_BESIDE, Style.lined(0x77828A, 1.4));
    styles.put(Ink.HERE, Style.filled(DARK).edged(DARK, 1.8));
    styles.put(Ink.NAMED, Style.filled(0xFBFAF6).edged(DARK, 1.6));
  }

  private static void cylinder(Map<Ink, Style> styles) {
    styles.put(Ink.CASTING, Style.filled(0xD9D6CB).edged(0x48575F, 1));
    styles.put(Ink.PISTON, Style.filled(0x8FA5B1).edged(DARK, 1.2));
    styles.put(Ink.ROD, Style.filled(0xE6ECEE).edged(DARK, 1.2));
    styles.put(Ink.CRANK, Style.filled(0xEDE3CF).edged(0x6A5A3C, 1.2));
    styles.put(Ink.VALVE, Style.filled(0xFBFAF6).edged(DARK, 1.4));
    styles.put(Ink.TOUCH, Style.lined(0xB3152B, 3.6));
    styles.put(Ink.BEFORE, Style.lined(0x5A2A80, 2.6).dashed(5, 3));
  }

  private static void words(Map<Ink, Style> styles) {
    styles.put(Ink.COUNT, Style.filled(DARK).heavy());
    styles.put(Ink.LABEL, Style.filled(DARK));
    styles.put(Ink.WARNING, Style.filled(0x870D1E).heavy());
  }
}
