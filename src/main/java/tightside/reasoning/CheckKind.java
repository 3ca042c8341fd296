package tightside.reasoning;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import tightside.readings.Check;

/** What can be done next to find out more, and how long it takes from memory. */
public enum CheckKind {
  OIL(2, false, true),
  WIRING(5, false, true),
  /** Clear learned values and read again. */
  RESET(5, true, true),
  /** Read with the phaser's valve unplugged. */
  UNPLUG(5, true, false),
  /** Look at every edge of the cam wheel beside the crank's. */
  EDGES(15, true, false),
  PLUNGER(Check.Kind.PLUNGER, false),
  LOCKING_TOOL(Check.Kind.LOCKING_TOOL, false),
  COUNT(Check.Kind.COUNT, false),
  /** Turn two turns by hand and look at the marks. */
  TURN_BY_HAND(Check.Kind.TWO_TURNS, false),
  CALLIPER(10, false, false),
  COMPRESSION(Check.Kind.COMPRESSION, true),
  /** See in the pressure of a cylinder when its valves open and close. */
  VALVE_ANGLE(45, true, false);

  private final int minutes;
  private final boolean turnsByPower;
  private final boolean cheap;

  CheckKind(int minutes, boolean turnsByPower, boolean cheap) {
    this.minutes = minutes;
    this.turnsByPower = turnsByPower;
    this.cheap = cheap;
  }

  CheckKind(Check.Kind kind, boolean turnsByPower) {
    this(CheckMinutesOf.memory(kind), turnsByPower, false);
  }

  int usualMinutes() {
    return minutes;
  }

  /** Whether the engine is cranked or runs for it. */
  public boolean turnsByPower() {
    return turnsByPower;
  }

  /** Whether it is a cheap cause, which is looked at first. */
  boolean cheap() {
    return cheap;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<CheckKind> of(String word) {
    return Arrays.stream(values()).filter(c -> c.word().equals(word)).findFirst();
  }
}
