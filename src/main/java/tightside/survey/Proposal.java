package tightside.survey;

/**
 * A measurement worth taking for the sake of a count.
 *
 * @param measurement with what it is expected to read
 * @param spreadNow of the count, pitches, possible blunders included
 * @param spreadThen the same once it is taken
 */
public record Proposal(Measurement measurement, double spreadNow, double spreadThen) {}
