package tightside.files;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.FaceCurve;

/** A section on one line, in braces. */
final class Braces {

  private final StringBuilder text = new StringBuilder();

  Braces with(String key, String value) {
    text.append(text.length() == 0 ? "" : ", ").append(key).append(": ").append(value);
    return this;
  }

  Braces with(String key, double value) {
    return with(key, YamlText.number(value));
  }

  /** A word, left out where it is what it would be without saying. */
  Braces unless(Enum<?> usual, String key, Enum<?> value) {
    return value == usual ? this : with(key, Terms.of(value));
  }

  @Override
  public String toString() {
    return text.length() == 0 ? "{}" : "{ " + text + " }";
  }

  static String point(Vector2D at) {
    return "[" + YamlText.number(at.getX()) + ", " + YamlText.number(at.getY()) + "]";
  }

  static String face(FaceCurve curve) {
    return "["
        + point(curve.start())
        + ", "
        + point(curve.middle())
        + ", "
        + point(curve.end())
        + "]";
  }
}
