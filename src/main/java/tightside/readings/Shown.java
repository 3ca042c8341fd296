package tightside.readings;

/** What a check shows. */
public record Shown(double value, Unit unit) {

  /** In what it is read. */
  public enum Unit {
    LINKS,
    MM,
    /** Of the shaft that is looked at, positive = ahead. */
    SHAFT_DEGREES,
    /** What the compression law gives. */
    COMPRESSION
  }

  /** How far apart two readings of one check are. */
  double apart(Shown other) {
    return Math.abs(value - other.value);
  }
}
