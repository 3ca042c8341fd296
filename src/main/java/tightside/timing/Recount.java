package tightside.timing;

/**
 * A strand to count again.
 *
 * @param strand as it belongs
 * @param counted links that were counted
 * @param wouldBe links that would go with the other counts
 * @param otherwise what the other counts say without this one
 */
public record Recount(Strand strand, long counted, long wouldBe, Lay otherwise) {}
