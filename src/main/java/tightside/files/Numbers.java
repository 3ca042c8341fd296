package tightside.files;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tightside.drive.Limits;
import tightside.files.Node.Scalar.Kind;
import tightside.geometry.Bearing;

/**
 * Reads numbers: plain decimals with a point, of a size that can be meant.
 *
 * <p>What other programs would guess at (quotes, decimal commas, exponents, units) is refused with
 * what to write.
 */
final class Numbers {

  private static final Pattern WITH_COMMA = Pattern.compile("([-+]?\\d+),(\\d+)");
  private static final Pattern WITH_UNIT =
      Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*(?:[a-zA-Z]{1,8}|°|%|″|\")");
  private static final Pattern NUMERIC =
      Pattern.compile("[-+]?(?:0[xob][0-9a-fA-F_]+|[0-9._]*[0-9][0-9._]*(?:[eE][-+]?\\d+)?)");
  private static final Pattern NOT_FINITE = Pattern.compile("[-+]?\\.?(?:nan|inf|infinity)");

  /** Nobody meant a number by more than this. */
  private static final int LONGEST = 60;

  private Numbers() {}

  static Decoder<Double> number(Limits limits) {
    return value -> written(value).flatMap(text -> inside(value, text, limits));
  }

  /** A number that counts something. */
  static Decoder<Integer> count(Limits limits) {
    return value -> {
      Optional<String> text = written(value);
      if (text.isPresent() && text.get().indexOf('.') >= 0) {
        value.complain(Fault.NUMBER_NOT_WHOLE);
        return Optional.empty();
      }
      return text.flatMap(t -> inside(value, t, limits)).map(Double::intValue);
    };
  }

  static Decoder<Bearing> bearing() {
    Decoder<Double> degrees = number(Limits.BEARING_DEGREES);
    return value -> degrees.decode(value).map(Bearing::new);
  }

  private static Optional<Double> inside(Value value, String text, Limits limits) {
    double number = Double.parseDouble(text);
    if (limits.allow(number)) {
      return Optional.of(number);
    }
    value.complain(
        Fault.NUMBER_OUTSIDE,
        Map.of("least", limits.least(), "most", limits.most(), "unit", limits.unit()));
    return Optional.empty();
  }

  /** The text of a plain decimal. */
  private static Optional<String> written(Value value) {
    if (!(value.node() instanceof Node.Scalar scalar)) {
      value.complain(Fault.NOT_A_NUMBER);
      return Optional.empty();
    }
    if (scalar.kind() == Kind.NUMBER && plain(scalar.text())) {
      return Optional.of(scalar.text());
    }
    complain(value, scalar);
    return Optional.empty();
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

  private static void complain(Value value, Node.Scalar scalar) {
    String text = scalar.text().length() > LONGEST ? "" : scalar.text();
    Matcher comma = WITH_COMMA.matcher(text);
    Matcher unit = WITH_UNIT.matcher(text);
    if (scalar.kind() == Kind.NOTHING) {
      value.complain(Fault.VALUE_MISSING);
    } else if (plain(scalar.text())) {
      value.complain(Fault.NUMBER_QUOTED);
    } else if (comma.matches()) {
      value.complain(
          Fault.NUMBER_WITH_COMMA, Map.of("right", comma.group(1) + "." + comma.group(2)));
    } else if (NOT_FINITE.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
      value.complain(Fault.NUMBER_NOT_FINITE);
    } else if (NUMERIC.matcher(text).matches()) {
      value.complain(Fault.NUMBER_NOT_PLAIN);
    } else if (unit.matches()) {
      value.complain(Fault.NUMBER_WITH_UNIT, Map.of("right", unit.group(1)));
    } else {
      value.complain(Fault.NOT_A_NUMBER);
    }
  }
}
