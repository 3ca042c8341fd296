package tightside.session;

/**
 * A shaft as a row of text.
 *
 * @param shaftDegrees signed, positive = advanced
 * @param crankDegrees the same in degrees of the crankshaft
 * @param state advanced, right or retarded
 */
public record ShaftRow(
    String shaft, String role, String shaftDegrees, String crankDegrees, String state) {}
