package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;

/** States that stand for what is believed of a hypothesis, each as good as any other. */
final class States {

  private States() {}

  /** So many states, drawn evenly through the weights of the amounts. */
  static List<double[]> of(Hypothesis hypothesis, Marginal marginal, double[] base, int most) {
    List<Effect> amounts = hypothesis.amounts();
    if (amounts.isEmpty() || marginal.weights().length == 0) {
      return List.of(hypothesis.fixedPart(base));
    }
    List<double[]> states = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < marginal.weights().length && states.size() < most; i++) {
      sum += marginal.weights()[i];
      while (states.size() < most && sum > (states.size() + 0.5) / most) {
        double[] quantities = hypothesis.fixedPart(base);
        amounts.get(0).curve().addTo(quantities, marginal.first()[i]);
        if (amounts.size() > 1) {
          amounts.get(1).curve().addTo(quantities, marginal.second()[i]);
        }
        states.add(quantities);
      }
    }
    return states;
  }
}
