package tightside.validation;

/**
 * The length factor of ISO 10823, f3 = ((z2 - z1)/2pi)^2, found from the program's own paths: X =
 * 2a/p + (z1 + z2)/2 + f3 p/a, with the sprockets so far apart that little else is left.
 *
 * @param value f3 as the path has it
 * @param uncertain what else may be in it: the formula's own error, and the rounding of doubles
 */
public record FactorF3(double value, double uncertain) {

  /** Many teeth, so that a pitch radius is nearly z p / 2pi. */
  private static final int SMALL = 200;

  private static final double PITCH_MM = 2;
  private static final double CENTRE_MM = 8000;

  public static FactorF3 at(int difference) {
    TwoSprockets drive = new TwoSprockets(SMALL, SMALL + difference, PITCH_MM, CENTRE_MM);
    double c = drive.centrePitches();
    double rest = drive.path().pitches() - 2 * c - (SMALL + SMALL + difference) / 2.0;
    double error = Math.max(drive.formulaShortByAtMost(), drive.formulaLongByAtMost());
    return new FactorF3(rest * c, error * c + 1e-7);
  }
}
