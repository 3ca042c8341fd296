package tightside.reasoning;

import java.util.List;
import java.util.Optional;

/**
 * An explanation with the belief that it deserves.
 *
 * @param prior probability before anything was read
 * @param probability once everything was
 * @param logEvidence log of the probability of the readings under it
 * @param amount nothing where it has none
 * @param factors reading by reading, what each made of the belief: prior times all of them is the
 *     probability; empty where nobody asked
 */
public record Weighed(
    Explanation what,
    double prior,
    double probability,
    double logEvidence,
    Optional<Amount> amount,
    List<Double> factors) {

  public Weighed {
    factors = List.copyOf(factors);
  }

  Weighed with(List<Double> otherFactors) {
    return new Weighed(what, prior, probability, logEvidence, amount, otherFactors);
  }
}
