package tightside.lesson;

import java.util.Arrays;
import java.util.Optional;
import tightside.drive.Seen;
import tightside.timing.Seat;
import tightside.timing.State;

/** The ready lessons: ten minutes and one wrong belief each, on a demo drive. */
public enum ReadyLesson {
  PAINT("two-cams-arm", Seen.COVER_OFF, Quantity.CRANK_DEGREES, teeth(0.5), 1),
  TWO_TURNS("two-cams-arm", Seen.BORESCOPE, Quantity.CRANK_TURNS, Margin.EXACT, 2),
  TEN_DEGREES("v-six-two-stages", Seen.COVER_OFF, Quantity.SHAFT_DEGREES, teeth(0.5), 0),
  PLAIN_LINKS("two-cams-arm", Seen.COVER_OFF, Quantity.CRANK_DEGREES, teeth(0.5), 2),
  TOOL_GOES_IN("two-cams-arm", Seen.BORESCOPE, Quantity.CRANK_DEGREES, new Margin(0.5, 0.4), 1),
  EARLY_CAM("one-tooth-forgives", Seen.COVER_OFF, Quantity.COMPRESSION, teeth(0.3), 0);

  /** Play of the locking tools that are tried, camshaft degrees; invented. */
  private static final double TOOL_PLAY = 1.5;

  private final String model;
  private final Seen access;
  private final Quantity quantity;
  private final Margin margin;
  private final int closing;

  ReadyLesson(String model, Seen access, Quantity quantity, Margin margin, int closing) {
    this.model = model;
    this.access = access;
    this.quantity = quantity;
    this.margin = margin;
    this.closing = closing;
  }

  private static Margin teeth(double absolute) {
    return new Margin(absolute, 0);
  }

  /** The name by which it is called for. */
  public String id() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  public static Optional<ReadyLesson> named(String id) {
    return Arrays.stream(values()).filter(lesson -> lesson.id().equals(id)).findFirst();
  }

  public String title() {
    return LessonTexts.fill(id() + ".title", java.util.Map.of());
  }

  /** The demo drive that it plays on, by the name of its file. */
  public String model() {
    return model;
  }

  /**
   * @param setting the drive of {@link #model}
   */
  public LessonSheet on(Setting setting) {
    LessonSheet.Outline outline =
        new LessonSheet.Outline(
            id(),
            title(),
            access,
            this == PLAIN_LINKS,
            this == TOOL_GOES_IN ? Optional.of(TOOL_PLAY) : Optional.empty(),
            Optional.of(closing));
    return new LessonSheet(outline, setting, Truth.of(setting, state(), quantity, margin));
  }

  private State state() {
    State right = State.reference();
    return switch (this) {
      case PAINT -> right.reseated(new Seat("main", "exhaust"), -1);
      case TWO_TURNS -> right;
      case TEN_DEGREES -> right.reseated(new Seat("left", "left-intake"), -1);
      case PLAIN_LINKS -> right.reseated(new Seat("main", "intake"), -1);
      case TOOL_GOES_IN -> right.stretched("main", 0.2);
      case EARLY_CAM -> right.reseated(new Seat("main", "intake"), 1);
    };
  }
}
