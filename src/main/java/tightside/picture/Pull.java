package tightside.picture;

import java.util.List;
import java.util.Optional;
import tightside.timing.ChainSolution;
import tightside.timing.State;
import tightside.timing.Strand;

/** How a strand is pulled as things stand: the tight and the slack side are so only forward. */
enum Pull {
  TIGHT("tight side", true),
  SLACK("slack side", false),
  /** The tensioner has run out, so it is the crank alone that keeps it tight. */
  TIGHT_WHILE_PULLED("tight only while pulled", true),
  /** The tensioner has run out, or is held back. */
  HANGING("slack: nothing holds it", false),
  NOT_HELD("not held tight", false),
  /** The engine was turned back: what was slack is pulled, and the other way round. */
  PULLED_BACKWARD("now pulled", true),
  LET_GO_BACKWARD("now loose", false);

  private final String words;
  private final boolean tight;

  Pull(String words, boolean tight) {
    this.words = words;
    this.tight = tight;
  }

  static Pull of(ChainSolution chain, State state, Strand strand) {
    if (state.arrived() == State.Arrived.BACKWARD) {
      return strand.taut() ? LET_GO_BACKWARD : PULLED_BACKWARD;
    }
    if (hangs(chain)) {
      return !strand.taut()
          ? HANGING
          : state.heldMm().containsKey(chain.chain().name()) ? NOT_HELD : TIGHT_WHILE_PULLED;
    }
    return strand.taut() ? TIGHT : SLACK;
  }

  /** Whether a chain has a tensioner and more slack than that takes up. */
  static boolean hangs(ChainSolution chain) {
    return chain.tensioner().filter(reading -> !reading.taut()).isPresent();
  }

  /**
   * In a few words.
   *
   * @param unseen why it can't be seen
   */
  List<String> words(Optional<String> unseen) {
    if (unseen.isEmpty()) {
      return List.of(words);
    }
    return this == TIGHT || this == SLACK
        ? List.of(words.replace(" side", ", ") + unseen.get())
        : List.of(words, unseen.get());
  }

  Ink line() {
    return tight ? Ink.TIGHT : Ink.SLACK;
  }
}
