package tightside.timing;

import java.util.List;

/** What the links that a person counted say about a chain. */
public sealed interface CountVerdict {

  /** What they leave open. */
  Unproved unproved();

  /** No strand that can be seen was counted. */
  record NothingCounted(Unproved unproved) implements CountVerdict {}

  /** Every strand counted has the links that belong there. */
  record Fits(Unproved unproved) implements CountVerdict {}

  /**
   * A sprocket or more sit off their place.
   *
   * @param simplest the explanations that move the fewest sprockets, and of those by the fewest
   *     teeth in all; several where they are equals, those that leave the driving sprocket alone
   *     first
   */
  record Misplaced(List<Lay> simplest, Unproved unproved) implements CountVerdict {
    public Misplaced {
      simplest = List.copyOf(simplest);
    }
  }

  /**
   * All strands were counted, and together they are not the links of the chain.
   *
   * @param tooMany links counted too many (+) or too few (-)
   * @param again strands to count again, the likeliest mistake first
   * @param unproved all that is open when nothing is counted
   */
  record SumWrong(long tooMany, List<Recount> again, Unproved unproved) implements CountVerdict {
    public SumWrong {
      again = List.copyOf(again);
    }
  }

  /**
   * The counts ask for more teeth than a sprocket is ever put back wrong by.
   *
   * @param ifRight the simplest explanations if the counts are right all the same
   * @param again strands to count again, the likeliest mistake first
   */
  record TooFar(List<Lay> ifRight, List<Recount> again, Unproved unproved) implements CountVerdict {
    public TooFar {
      ifRight = List.copyOf(ifRight);
      again = List.copyOf(again);
    }
  }
}
