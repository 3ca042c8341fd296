package tightside.reasoning;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Which known faults are clear: the readings that a fault predicts, with the amount that was drawn,
 * lie more than three spreads from the nearest that any other explanation can predict, single ones
 * and pairs, each with the amounts that suit it best. Nothing that was read comes into it, nor how
 * frequent an explanation is.
 *
 * <p>No other explanations are those of the fault's own group, which read alike, and pairs of one
 * of them with something more: the same fault, and an addition that readings may not show (with a
 * tenth of a percent of stretch more, no fault would be clear). So a clear fault is ranked first
 * where its group is, and where such a pair is foremost; how often its group alone is, is told
 * beside. "None of these" predicts nothing, so that nothing lies apart from it. Where a fault
 * leaves a plunger free, it predicts no place of it: what the place that was drawn says for the
 * fault is less by what it says for no place. A plunger at the wrong place then speaks against one
 * that has to stand right by the rarity of a slip in reading it, and by no more.
 *
 * <p>Not clear by themselves are "nothing wrong", pairs and "none of these".
 */
final class Clearness {

  private static final double CLEAR = Grouping.ALIKE;

  /** Where the quick distance along bent curves is so many spreads, the true one is over three. */
  private static final double FAR = 5;

  private static final Set<Cause> NO_FAULT_OF_THE_LIST =
      EnumSet.of(Cause.NONE, Cause.SEVERAL, Cause.OTHER);

  private final Likelihood likelihood;
  private final Separation separation;
  private final Grouping grouping;
  private final List<Hypothesis> hypotheses;

  Clearness(Likelihood likelihood, double[] base, Grouping grouping, List<Hypothesis> hypotheses) {
    this.likelihood = likelihood;
    this.grouping = grouping;
    this.hypotheses = hypotheses;
    separation = new Separation(likelihood, base);
  }

  boolean clear(FaultMaker.Made made) {
    if (NO_FAULT_OF_THE_LIST.contains(made.truth().what().cause())) {
      return false;
    }
    double own = ownOpen(made);
    return hypotheses.stream()
        .filter(h -> another(made.truth().what(), h.what()))
        .allMatch(h -> apart(made, h, own) > CLEAR);
  }

  /** The explanation that lies nearest to a fault, and how far, in words. */
  String nearest(FaultMaker.Made made) {
    double own = ownOpen(made);
    Hypothesis nearest = null;
    double least = Double.POSITIVE_INFINITY;
    for (Hypothesis other : hypotheses) {
      if (another(made.truth().what(), other.what())) {
        double apart = apart(made, other, own);
        nearest = apart < least ? other : nearest;
        least = Math.min(apart, least);
      }
    }
    return "nearest %s, %.2f spreads".formatted(FaultWords.of(nearest.what()), least);
  }

  /** Whether a group is that of a fault, or led by a pair that the fault is part of. */
  boolean named(FaultMaker.Made made, Group group) {
    return !another(made.truth().what(), group.first().what())
        && group.first().what().cause() != Cause.OTHER;
  }

  private boolean another(Explanation truth, Explanation other) {
    int own = grouping.of(truth);
    return other.cause() != Cause.OTHER
        && (other.cause() == Cause.SEVERAL
            ? other.parts().stream().noneMatch(part -> grouping.of(part) == own)
            : grouping.of(other) != own);
  }

  private double apart(FaultMaker.Made made, Hypothesis other, double ownOpen) {
    double quick = separation.atLeast(made.quantities(), other);
    boolean straight = other.amounts().stream().allMatch(e -> e.curve().straight());
    double far = straight ? CLEAR : FAR;
    if (quick * quick - ownOpen > far * far) {
      return quick;
    }
    double apart = separation.nearest(made.quantities(), made.asItStands(), other);
    boolean bothFree = other.open().freed() == made.truth().open().freed();
    return Math.sqrt(Math.max(0, apart * apart - (bothFree ? 0 : ownOpen)));
  }

  /** Twice the log of one over the probability of a plunger's reading that is left free. */
  private double ownOpen(FaultMaker.Made made) {
    double squared = 0;
    for (Factor factor : likelihood.compiled().factors()) {
      if (factor instanceof PlungerFactor plunger && made.truth().open().frees(plunger.place())) {
        squared -= 2 * plunger.log(made.quantities(), made.truth().open());
      }
    }
    return squared;
  }
}
