package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tightside.drive.Seen;
import tightside.timing.CountJudge;
import tightside.timing.Strand;
import tightside.timing.Unproved;

/**
 * The words for what counts leave open: a sentence for each kind.
 *
 * @param links of the whole chain
 * @param cover what can be seen
 */
record UnprovedWords(String chain, int links, Seen cover) {

  List<String> of(Unproved unproved) {
    List<String> sentences = new ArrayList<>();
    if (!unproved.together().isEmpty()) {
      sentences.add(
          "Not proved on %s: %s, because %s."
              .formatted(chain, together(unproved), because(unproved.uncounted())));
    } else if (!unproved.uncounted().isEmpty()) {
      sentences.add(
          "On %s %s, and follows only if the chain really has %d links."
              .formatted(chain, because(unproved.uncounted()), links));
    }
    if (!unproved.heldByClamp().isEmpty()) {
      sentences.add(
          "The links of %s fix no angle of %s, whose sprocket is held by the bolt's clamp alone."
              .formatted(chain, Words.list(unproved.heldByClamp(), "and")));
    }
    return sentences;
  }

  private static String together(Unproved unproved) {
    return unproved.together().stream()
        .map(
            group ->
                group.size() == 1
                    ? "the %s sprocket could sit off".formatted(group.get(0))
                    : "the %s sprockets could sit off together".formatted(Words.list(group, "and")))
        .collect(Collectors.joining("; "));
  }

  private String because(List<Strand> uncounted) {
    return uncounted.isEmpty()
        ? "the driving sprocket bears no mark"
        : Words.list(uncounted.stream().map(this::why).toList(), "and");
  }

  private String why(Strand strand) {
    if (strand.seen() == Seen.NEVER) {
      return Words.strand(strand) + " can't be seen";
    }
    return CountJudge.countable(strand, cover)
        ? Words.strand(strand) + " is not counted"
        : Words.strand(strand) + " can't be counted " + Words.with(cover);
  }
}
