package tightside.engine;

/** How a cam lifts its valve between closed and fully open. */
public enum LiftLaw {
  POLYNOMIAL_345,
  POLYNOMIAL_4567,
  CYCLOIDAL,
  MODIFIED_SINE
}
