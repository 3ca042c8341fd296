package tightside.timing;

/**
 * A sprocket that is held by its bolt's clamp alone. The lay of the links fixes nothing there: what
 * counts is how the chain stands at the moment of tightening. Slack that is left in the tight
 * strand then is an error of the camshaft from then on.
 *
 * @param teeth of the sprocket
 * @param pitchMm of the chain
 */
public record FrictionJoint(int teeth, double pitchMm) {

  public FrictionJoint {
    if (teeth < 3 || !(pitchMm > 0)) {
      throw new IllegalArgumentException(
          "a sprocket has 3 teeth or more and a pitch above 0, not " + teeth + " and " + pitchMm);
    }
  }

  /** Degrees of the shaft for one mm of slack: 360 / (z p). */
  public double degreesPerMm() {
    return 360 / (teeth * pitchMm);
  }

  /** The error, in degrees of the shaft, of so much slack left while tightening. */
  public double errorDegrees(double slackMm) {
    return slackMm * degreesPerMm();
  }
}
