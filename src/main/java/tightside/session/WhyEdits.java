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
}
