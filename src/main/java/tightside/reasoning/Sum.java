package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;

/** Terms of a double sum as they come. */
final class Sum {

  private final List<double[]> terms = new ArrayList<>();

  void add(double log, double first, double second) {
    terms.add(new double[] {log, first, second});
  }

  double[] logs() {
    return column(0);
  }

  double[] first() {
    return column(1);
  }

  double[] second() {
    return column(2);
  }

  private double[] column(int place) {
    return terms.stream().mapToDouble(t -> t[place]).toArray();
  }
}
