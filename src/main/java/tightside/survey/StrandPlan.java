package tightside.survey;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;

/**
 * A strand before anything is known of its length.
 *
 * @param from shaft whose sprocket it leaves
 * @param to shaft whose sprocket it arrives at
 * @param places the sprockets on the route that it joins, the marked ones at both ends included
 * @param taut false for the slack side alone
 * @param seen whether any person can see it whole
 */
public record StrandPlan(
    String chain, String from, String to, List<Integer> places, boolean taut, boolean seen) {

  public StrandPlan {
    places = List.copyOf(places);
  }

  /** The strands of a chain in the direction of travel, as the timing has them. */
  public static List<StrandPlan> of(Chain chain) {
    List<Integer> sprockets = chain.sprocketPlaces();
    List<Integer> marked =
        sprockets.stream().filter(p -> chain.sprocketAt(p).mark().isPresent()).toList();
    int slackAfter =
        chain
            .tensionerPlace()
            .map(t -> sprockets.stream().filter(p -> p < t).reduce(0, (a, b) -> b))
            .orElse(0);
    List<StrandPlan> plans = new ArrayList<>();
    for (int i = 0; i < marked.size(); i++) {
      plans.add(plan(chain, marked.get(i), marked.get((i + 1) % marked.size()), slackAfter));
    }
    return plans;
  }

  private static StrandPlan plan(Chain chain, int from, int to, int slackAfter) {
    List<Integer> sprockets = chain.sprocketPlaces();
    List<Integer> places = new ArrayList<>(List.of(from));
    boolean taut = true;
    boolean seen = true;
    int i = sprockets.indexOf(from);
    do {
      taut &= sprockets.get(i) != slackAfter;
      seen &= chain.sprocketAt(sprockets.get(i)).strandSeen() != tightside.drive.Seen.NEVER;
      i = (i + 1) % sprockets.size();
      places.add(sprockets.get(i));
    } while (sprockets.get(i) != to);
    return new StrandPlan(
        chain.name(),
        chain.sprocketAt(from).shaft(),
        chain.sprocketAt(to).shaft(),
        places,
        taut,
        seen);
  }
}
