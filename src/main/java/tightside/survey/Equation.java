package tightside.survey;

import java.util.function.ToDoubleFunction;

/**
 * One observation equation.
 *
 * @param kind what it rests on
 * @param value what would be observed on a site
 * @param observed mm, degrees or pitches
 * @param sigma its standard uncertainty, the same unit
 */
record Equation(Kind kind, ToDoubleFunction<Site> value, double observed, double sigma) {

  enum Kind {
    /** Something measured. */
    MEASURED,
    /** Something that must hold. */
    FACT,
    /** A whole number of links on a strand. */
    WHOLE
  }
}
