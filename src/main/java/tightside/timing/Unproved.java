package tightside.timing;

import java.util.List;

/**
 * What counts leave open, however well they fit.
 *
 * @param uncounted strands that were not counted, or can't be
 * @param together sprockets, by shaft, that could sit any same number of teeth further on without
 *     changing a counted strand; one list for each group that hangs together
 * @param lays the lays nearest to the one found that the counts can't tell from it: each group
 *     moved by one tooth either way
 * @param heldByClamp shafts whose sprocket is held by the bolt's clamp alone: there the lay of the
 *     links fixes no angle
 */
public record Unproved(
    List<Strand> uncounted, List<List<String>> together, List<Lay> lays, List<String> heldByClamp) {

  public Unproved {
    uncounted = List.copyOf(uncounted);
    together = together.stream().map(List::copyOf).toList();
    lays = List.copyOf(lays);
    heldByClamp = List.copyOf(heldByClamp);
  }

  public boolean nothing() {
    return together.isEmpty() && heldByClamp.isEmpty();
  }
}
