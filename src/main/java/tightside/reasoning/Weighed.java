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
 * @param foreseen reading by reading, what the explanation led one to expect of it; nothing for two
 *     things at once; empty where nobody asked
 */
public record Weighed(
    Explanation what,
    double prior,
    double probability,
    double logEvidence,
    Optional<Amount> amount,
    List<Double> factors,
    List<Optional<Foreseen>> foreseen) {

  public Weighed {
    factors = List.copyOf(factors);
    foreseen = List.copyOf(foreseen);
  }

  Weighed(
      Explanation what,
      double prior,
      double probability,
      double logEvidence,
      Optional<Amount> amount) {
    this(what, prior, probability, logEvidence, amount, List.of(), List.of());
  }

  Weighed with(List<Double> otherFactors, List<Optional<Foreseen>> otherForeseen) {
    return new Weighed(what, prior, probability, logEvidence, amount, otherFactors, otherForeseen);
  }
}
