package tightside.timing;

/**
 * From what turn on a locked camshaft that has to be turned to meet its dowel is on the wrong
 * tooth.
 *
 * <p>With a mm of slack in the strand that arrives and b in the one that leaves, a sprocket on its
 * right tooth can stand anywhere from b behind its place to a ahead of it. So the right tooth never
 * asks for more turn than the larger of the two, with the play of the tools: the honest turn. A
 * sprocket one tooth off can stand no nearer to its place than a pitch less that. Both are the same
 * distance from half a tooth, which therefore tells them apart whenever the honest turn is less.
 * Stretch counts as slack.
 *
 * @param toothDegrees one tooth, the shaft's own degrees
 * @param honestDegrees the most that the right tooth can ask for
 */
public record DowelRule(String shaft, double toothDegrees, double honestDegrees) {

  /**
   * @param shaft of a marked sprocket
   */
  public static DowelRule of(HoldBack hold, String shaft) {
    double arriving = hold.arriving(shaft).orElseThrow().slackMm();
    double leaving = hold.leaving(shaft).orElseThrow().slackMm();
    double honest = Math.max(0, Math.max(arriving, leaving)) + hold.strandPlayMm();
    double perMm = hold.degreesPerMm(shaft);
    return new DowelRule(shaft, hold.pitchMm() * perMm, honest * perMm);
  }

  /** What half a tooth has left after slack and play, shaft degrees: the rule's own doubt. */
  public double marginDegrees() {
    return toothDegrees / 2 - honestDegrees;
  }

  /** The least turn that a wrong tooth asks for, shaft degrees; never below zero. */
  public double wrongFromDegrees() {
    return Math.max(0, toothDegrees - honestDegrees);
  }

  /**
   * More turn than this, in shaft degrees, and the sprocket is on the wrong tooth: half a tooth, or
   * the honest turn where that is more.
   */
  public double limitDegrees() {
    return Math.max(toothDegrees / 2, honestDegrees);
  }

  /**
   * Whether less turn than the limit proves the right tooth: not where slack and play hide half a
   * tooth.
   */
  public boolean provesTheRightTooth() {
    return marginDegrees() > 0;
  }
}
