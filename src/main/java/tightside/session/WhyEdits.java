package tightside.session;

/** What a person does on the card Why. */
public final class WhyEdits {

  private WhyEdits() {}

  /** Types into a field, or empties it. */
  public static Edit note(Snapshot now, String field, String words, String text) {
    return Edit.partOf(
        "why " + field,
        text.isBlank()
            ? "Empty \"%s\"".formatted(words)
            : "Set \"%s\" to %s".formatted(words, text),
        now.with(now.why().with(field, text)));
  }

  /** Ticks a fact, or takes the tick away. */
  public static Edit tick(Snapshot now, String field, String words, boolean ticked) {
    return Edit.single(
        (ticked ? "Tick \"%s\"" : "Take the tick from \"%s\"").formatted(words),
        now.with(now.why().with(field, ticked ? WhyForm.TICKED : "")));
  }
}
