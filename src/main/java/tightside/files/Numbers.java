package tightside.files;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tightside.drive.Limits;
import tightside.files.Node.Scalar.Kind;
import tightside.geometry.Bearing;

/**
 * Reads numbers: plain decimals with a point, of a size that can be meant.
 *
 * <p>What other programs would guess at (quotes, decimal commas, exponents, units) is refused with
 * what to write. No value gives no number.
 */
final class Numbers {

  /** Nobody meant a number by more than this. */
  private static final int LONGEST = 60;

  private Numbers() {}

  static Optional<Double> number(Optional<Value> value, Limits limits) {
    if (value.isEmpty() || !plain(value.get())) {
      return Optional.empty();
    }
    return inside(value.get(), limits);
  }

  /** A number that counts something. */
  static Optional<Integer> count(Optional<Value> value, Limits limits) {
    if (value.isEmpty() || !plain(value.get())) {
      return Optional.empty();
    }
    if (((Node.Scalar) value.get().node()).text().indexOf('.') >= 0) {
      value.get().complain(Fault.NUMBER_NOT_WHOLE);
      return Optional.empty();
    }
    Optional<Double> number = inside(value.get(), limits);
    return number.isPresent() ? Optional.of(number.get().intValue()) : Optional.empty();
  }

  static Optional<Bearing> bearing(Optional<Value> value) {
    Optional<Double> degrees = number(value, Limits.BEARING_DEGREES);
    return degrees.isPresent() ? Optional.of(new Bearing(degrees.get())) : Optional.empty();
  }

  static OptionalDouble primitive(Optional<Double> number) {
    return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
  }

  private static Optional<Double> inside(Value value, Limits limits) {
    double number = Double.parseDouble(((Node.Scalar) value.node()).text());
    if (limits.allow(number)) {
      return Optional.of(number);
    }
    value.complain(
        Fault.NUMBER_OUTSIDE,
        Map.of("least", limits.least(), "most", limits.most(), "unit", limits.unit()));
    return Optional.empty();
  }

  private static boolean plain(Value value) {
    if (!(value.node() instanceof Node.Scalar scalar)) {
      value.complain(Fault.NOT_A_NUMBER);
      return false;
    }
    if (scalar.kind() == Kind.NUMBER && plain(scalar.text())) {
      return true;
    }
    complain(value, scalar);
    return false;
  }

  /** Digits with at most one point, no needless zero in front. */
  static boolean plain(String text) {
    int first = text.startsWith("-") ? 1 : 0;
    int point = text.indexOf('.');
    int whole = point < 0 ? text.length() : point;
    boolean zeroInFront = text.startsWith("0", first) && whole > first + 1;
    return digits(text, first, whole)
        && !zeroInFront
        && (point < 0 || digits(text, point + 1, text.length()));
  }

  private static boolean digits(String text, int from, int to) {
    for (int i = from; i < to; i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return to > from;
  }

  /** Patterns that only a mistake needs. */
  private static final class Slips {
    static final Pattern COMMA = Pattern.compile("([-+]?\\d+),(\\d+)");
    static final Pattern UNIT =
        Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*(?:[a-zA-Z]{1,8}|°|%|″|\")");
    static final Pattern NUMERIC =
        Pattern.compile("[-+]?(?:0[xob][0-9a-fA-F_]+|[0-9._]*[0-9][0-9._]*(?:[eE][-+]?\\d+)?)");
    static final Pattern NOT_FINITE = Pattern.compile("[-+]?\\.?(?:nan|inf|infinity)");
  }

  private static void complain(Value value, Node.Scalar scalar) {
    String text = scalar.text().length() > LONGEST ? "" : scalar.text();
    Matcher comma = Slips.COMMA.matcher(text);
    Matcher unit = Slips.UNIT.matcher(text);
    if (scalar.kind() == Kind.NOTHING) {
      value.complain(Fault.VALUE_MISSING);
    } else if (plain(scalar.text())) {
      value.complain(Fault.NUMBER_QUOTED, Map.of("right", scalar.text()));
    } else if (comma.matches()) {
      value.complain(
          Fault.NUMBER_WITH_COMMA, Map.of("right", comma.group(1) + "." + comma.group(2)));
    } else if (Slips.NOT_FINITE.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
      value.complain(Fault.NUMBER_NOT_FINITE);
    } else if (Slips.NUMERIC.matcher(text).matches()) {
      value.complain(Fault.NUMBER_NOT_PLAIN);
    } else if (unit.matches()) {
      value.complain(Fault.NUMBER_WITH_UNIT, Map.of("right", unit.group(1)));
    } else {
      value.complain(Fault.NOT_A_NUMBER);
    }
  }
}
