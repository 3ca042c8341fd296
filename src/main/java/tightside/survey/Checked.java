package tightside.survey;

/**
 * What the adjustment says of one measurement.
 *
 * @param place in the survey
 * @param adjusted what the adjusted drive would read, mm or degrees
 * @param residual observed - adjusted, mm or degrees
 * @param normalised residual over its own standard uncertainty; 0 where nothing checks it
 * @param redundancy from 0 (nothing checks it) to 1 (the others know it already)
 * @param smallestFound the smallest blunder that the test of normalised residuals would find with
 *     the power {@link Detection#POWER}, mm or degrees; infinite where nothing checks it
 */
public record Checked(
    int place,
    Measurement measurement,
    double adjusted,
    double residual,
    double normalised,
    double redundancy,
    double smallestFound) {

  public boolean unchecked() {
    return redundancy < Detection.LEAST_REDUNDANCY;
  }
}
