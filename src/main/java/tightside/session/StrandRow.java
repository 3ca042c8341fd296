package tightside.session;

/**
 * A strand as a row of text, for those who can't or won't look at the drawing.
 *
 * @param links from mark to mark
 * @param between the plain links between the marked ones
 * @param misfit in pitches, signed; a dash where there is none
 * @param state taut, or the slack side and how it is
 * @param visibleWith what it takes to see it
 * @param counted as typed, with the way it was counted; empty if it was not
 */
public record StrandRow(
    StrandId id,
    String from,
    String to,
    String links,
    String between,
    String misfit,
    String state,
    String visibleWith,
    String counted) {}
