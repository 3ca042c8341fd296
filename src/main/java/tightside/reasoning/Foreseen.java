package tightside.reasoning;

import java.util.OptionalDouble;

/**
 * What an explanation led one to expect of a reading, with the readings before it in mind: where a
 * factor comes from. It is large where the reading falls near to a narrow expectation that other
 * explanations do not share.
 *
 * @param expected in the unit of the reading; nothing where the reading is a count, a yes or a no,
 *     or where anything is as good
 * @param spread standard deviation of that, of the reading's own spread and of amounts still open
 * @param apart how far the reading lies from it, in these spreads
 * @param chance how probable what was read was; nothing where a number was expected
 */
public record Foreseen(
    OptionalDouble expected, double spread, double apart, OptionalDouble chance) {

  static Foreseen number(double expected, double spread, double read) {
    double apart = Math.abs(read - expected) / spread;
    return new Foreseen(OptionalDouble.of(expected), spread, apart, OptionalDouble.empty());
  }

  static Foreseen chance(double chance) {
    return new Foreseen(OptionalDouble.empty(), 0, 0, OptionalDouble.of(chance));
  }
}
