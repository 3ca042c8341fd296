package tightside.reasoning;

import tightside.readings.Check;
import tightside.readings.CheckMinutes;

/** The minutes that the mistakes page begins with. */
final class CheckMinutesOf {

  private CheckMinutesOf() {}

  static int memory(Check.Kind kind) {
    return CheckMinutes.fromMemory().byKind().get(kind);
  }
}
