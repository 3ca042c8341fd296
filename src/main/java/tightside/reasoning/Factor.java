package tightside.reasoning;

import java.util.List;
import java.util.Map;

/** A reading whose likelihood is no normal density: it goes in or not, so many links, from to. */
interface Factor {

  /** What is left of any reading's probability by slips of the person who took it. */
  double SLIP = 0.02;

  /**
   * Log of the probability of the reading.
   *
   * @param broad what is left open by the explanation
   */
  double log(double[] quantities, Open broad);

  /** Amounts of an effect between which the likelihood is smooth, by quantity and change. */
  List<Double> breaks(double[] base, Curve curve);

  /** Whether the reading hangs on anything that an effect changes. */
  boolean heeds(Curve curve);

  /**
   * Twice the log by which data that one state would give speak for it against another: the square
   * of their distance in spreads.
   */
  double squaredApart(double[] one, Open oneOpen, double[] other, Open otherOpen);

  /**
   * What an explanation leaves open.
   *
   * @param freed the plunger's place that may stand anywhere; -1 for none
   * @param everything whether nothing is forced at all
   * @param found by what a person can look at first: the probability that something is found
   */
  record Open(int freed, boolean everything, Map<Cheap, Double> found) {

    public Open {
      found = Map.copyOf(found);
    }

    boolean frees(int place) {
      return everything || freed == place;
    }
  }
}
