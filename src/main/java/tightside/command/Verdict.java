package tightside.command;

import tightside.drive.ChainFit;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;

/** Whether an answer says that something is wrong with the drive. */
final class Verdict {

  private Verdict() {}

  static int of(Solution solution) {
    boolean wrong = solution.chains().stream().anyMatch(c -> !c.countsTrusted() || astray(c));
    return wrong ? Answer.DRIVE_WRONG : Answer.ANSWERED;
  }

  /** Out of travel, or worn so far that it finds no way round. */
  private static boolean astray(ChainSolution chain) {
    return !(chain.fit() instanceof ChainFit.Solved)
        && !(chain.fit() instanceof ChainFit.CountedOnly);
  }
}
