package tightside.survey;

import java.util.OptionalDouble;
import tightside.drive.Limits;

/**
 * What was read, and how well.
 *
 * @param value mm, or degrees for an angle
 * @param given the standard uncertainty that the person gave, in the same unit; nothing leaves it
 *     to the tool
 */
public record Reading(double value, Tool tool, OptionalDouble given) {

  /** Standard uncertainties that can be meant, mm or degrees. */
  public static final Limits SIGMA = new Limits(0.001, 50, "mm or degrees");

  public Reading {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a reading must be finite, not " + value);
    }
    given.ifPresent(s -> SIGMA.refuseOutside("sigma", s));
  }

  public static Reading by(Tool tool, double value) {
    return new Reading(value, tool, OptionalDouble.empty());
  }

  /** Standard uncertainty, mm or degrees. */
  public double sigma() {
    return given.orElse(tool.sigma());
  }

  public Reading withValue(double other) {
    return new Reading(other, tool, given);
  }
}
