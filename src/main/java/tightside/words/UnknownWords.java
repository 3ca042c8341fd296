package tightside.words;

import tightside.timing.Unknown;

/** What a solution does not know, in words. */
public final class UnknownWords {

  private UnknownWords() {}

  public static String of(Unknown unknown) {
    String first = unknown.shafts().isEmpty() ? "" : unknown.shafts().get(0);
    String chain = unknown.chain();
    return switch (unknown.kind()) {
      case STRAND_NEVER_SEEN ->
          "Nobody can see the run from %s to %s, so nobody can count it: its links stay unproved."
              .formatted(first, unknown.shafts().get(1));
      case MARK_NEVER_SEEN ->
          "Nobody can see the mark of %s on chain %s, so no count can start or end there."
              .formatted(first, chain);
      case MARK_MISSING ->
          "The sprocket of %s on chain %s bears no mark: no count starts or ends there, and none proves where that shaft stands."
              .formatted(first, chain);
      case FRICTION_JOINT ->
          "The sprocket of %s on chain %s is held by its bolt's clamp alone: the lay of the links fixes no angle there, the angle at tightening does."
              .formatted(first, chain);
      case TURNED_BACK ->
          "The engine went backwards last: the pulled side of chain %s has moved, and no angle holds until it is turned forward again."
              .formatted(chain);
      case PLUNGER_HELD ->
          "The plunger of chain %s is held back: the chain is not tight all round, and angles hold only where a run is pulled."
              .formatted(chain);
      case NO_WAY_ROUND ->
          "Chain %s finds no way round: before its slack is taken up, the tensioner runs into what stands beside it or the chain leaves a sprocket; nothing is known of the shafts that it drives."
              .formatted(chain);
      case COUNTED_ONLY ->
          "Chain %s is counted only. Its plunger's extension, its slack, its sag and the stretch at which its tensioner runs out need the shafts' places, the faces, and the arm with its plunger."
              .formatted(chain);
      case PITCH_MISSING ->
          "What the wear of chain %s does needs its pitch when new: add pitch, in mm."
              .formatted(chain);
      case RUN_MISSING ->
          "What the wear of chain %s does beyond the run from %s to %s needs the length of that run: measure its free part along the chain by ruler and add straight, in mm, to the sprocket on %s."
              .formatted(chain, first, unknown.shafts().get(1), first);
      case DRIVER_UNTIMED ->
          "%s, which drives chain %s, can't be timed, so neither can what that chain drives."
              .formatted(first, chain);
    };
  }
}
