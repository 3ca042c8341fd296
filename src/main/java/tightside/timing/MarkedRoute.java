package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;
import tightside.drive.Seen;
import tightside.drive.Sprocket;

/**
 * The marked sprockets of a chain and what lies between them: all that can be told from the order
 * of its route.
 *
 * @param slackAfter the place of the sprocket after which the chain is slack: the one before the
 *     tensioner, or the driving one
 */
record MarkedRoute(Chain chain, List<Integer> places, int slackAfter) {

  /**
   * Two marked sprockets that follow each other.
   *
   * @param from place of the first on the route
   * @param to place of the next
   * @param taut whether the chain is pulled all the way between them
   * @param seen the hardest to see of the runs between them
   */
  record Reach(int from, int to, boolean taut, Seen seen) {}

  static MarkedRoute of(Chain chain) {
    List<Integer> marked =
        chain.sprocketPlaces().stream().filter(place -> chain.sprocketAt(place).marked()).toList();
    int slackAfter =
        chain
            .tensionerPlace()
            .map(t -> chain.sprocketPlaces().stream().filter(p -> p < t).reduce(0, (a, b) -> b))
            .orElse(0);
    return new MarkedRoute(chain, marked, slackAfter);
  }

  /** From mark to mark in the direction of travel, from the first marked sprocket on. */
  List<Reach> reaches() {
    List<Reach> reaches = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      int from = places.get(i);
      int to = places.get((i + 1) % places.size());
      reaches.add(new Reach(from, to, !slackLiesIn(from, to), seen(from, to)));
    }
    return reaches;
  }

  /** The taut runs, sprocket to sprocket, of which no length is known: the shafts at their ends. */
  List<List<String>> unmeasuredRuns() {
    List<Integer> all = chain.sprocketPlaces();
    List<List<String>> runs = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Sprocket from = chain.sprocketAt(all.get(i));
      if (all.get(i) != slackAfter && from.straightMm().isEmpty()) {
        Sprocket to = chain.sprocketAt(all.get((i + 1) % all.size()));
        runs.add(List.of(from.shaft(), to.shaft()));
      }
    }
    return runs;
  }

  /** Whether the slack lies between two marked sprockets, going from the first to the next. */
  private boolean slackLiesIn(int from, int to) {
    return from < to
        ? slackAfter >= from && slackAfter < to
        : slackAfter >= from || slackAfter < to;
  }

  private Seen seen(int from, int to) {
    Seen hardest = Seen.COVER_ON;
    List<Integer> all = chain.sprocketPlaces();
    int i = all.indexOf(from);
    do {
      Seen run = chain.sprocketAt(all.get(i)).strandSeen();
      hardest = run.compareTo(hardest) > 0 ? run : hardest;
      i = (i + 1) % all.size();
    } while (all.get(i) != to);
    return hardest;
  }
}
