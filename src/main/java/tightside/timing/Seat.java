package tightside.timing;

/** A sprocket, by the chain it carries and the shaft it sits on. */
public record Seat(String chain, String shaft) {}
