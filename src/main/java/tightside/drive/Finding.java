package tightside.drive;

import java.util.Map;

/**
 * Something found out about a drive, without words: what, where, and the facts of the case.
 *
 * @param facts names, numbers and lists that the words need, by name
 */
public record Finding(Id id, Part part, Map<String, Object> facts) {

  /** How bad it is. */
  public enum Severity {
    /** The drive can't be used. */
    ERROR,
    /** The drive can be used; a person should look. */
    WARNING
  }

  /** What can be found. */
  public enum Id {
    NO_CRANKSHAFT(Severity.ERROR),
    SEVERAL_CRANKSHAFTS(Severity.ERROR),
    NO_CHAIN(Severity.ERROR),
    ROUTE_STARTS_WITHOUT_SPROCKET(Severity.ERROR),
    TOO_FEW_SPROCKETS(Severity.ERROR),
    UNKNOWN_SHAFT(Severity.ERROR),
    SHAFT_TWICE_ON_CHAIN(Severity.ERROR),
    TWO_TENSIONERS(Severity.ERROR),
    SAME_NAME(Severity.ERROR),
    PLACES_MISSING(Severity.ERROR),
    SHAFT_WITHOUT_PLACE(Severity.ERROR),
    COUNTS_BESIDE_PLACES(Severity.ERROR),
    COUNTS_MISSING(Severity.ERROR),
    COUNTS_NUMBER(Severity.ERROR),
    COUNTS_SUM(Severity.ERROR),
    STRAIGHT_BESIDE_PLACES(Severity.ERROR),
    MARK_WITHOUT_BEARING(Severity.ERROR),
    ROLLERS_TOUCH(Severity.ERROR),
    CRANK_NOT_DRIVING(Severity.ERROR),
    SHAFT_DRIVEN_TWICE(Severity.ERROR),
    SHAFT_UNREACHED(Severity.ERROR),
    STAGE_LOOP(Severity.ERROR),
    CAMSHAFT_SPEED(Severity.ERROR),
    SPROCKETS_OVERLAP(Severity.ERROR),
    FACE_MIDDLE_ASTRAY(Severity.ERROR),
    FACE_HOLLOW(Severity.ERROR),
    FACE_BACKWARDS(Severity.ERROR),
    FACE_TOO_TIGHT(Severity.ERROR),
    ARM_CANNOT_MOVE(Severity.ERROR),
    ARM_TURNS_BACK(Severity.ERROR),
    SPROCKET_MISSED(Severity.ERROR),
    NO_ROOM(Severity.ERROR),
    MARK_OFF_CHAIN(Severity.ERROR),
    CHAIN_TOO_SHORT(Severity.ERROR),
    OUT_OF_TRAVEL(Severity.ERROR),
    ODD_LINKS(Severity.WARNING),
    FEW_LINKS_OF_WRAP(Severity.WARNING),
    MISFIT(Severity.WARNING),
    COUNT_NOT_TRUSTED(Severity.WARNING),
    MUCH_FREE_SLACK(Severity.WARNING);

    private final Severity severity;

    Id(Severity severity) {
      this.severity = severity;
    }

    public Severity severity() {
      return severity;
    }
  }

  public Finding {
    facts = Map.copyOf(facts);
  }

  public boolean error() {
    return id.severity() == Severity.ERROR;
  }
}
