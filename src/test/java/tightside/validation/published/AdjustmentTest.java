package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import tightside.survey.LeastSquares;
import tightside.survey.LeastSquaresFit;
import tightside.validation.Printed;
import tightside.validation.Row;

/** The adjustment against published ones. Tolerance: half of the last printed digit. */
class AdjustmentTest {

  private static final List<Row> OBSERVED = Row.of("published/level-nets.csv");
  private static final List<Row> RESULTS = Row.of("published/level-net-results.csv");
  private static final List<Row> MISRA = Row.of("published/strd-misra1a.csv");

  private static List<Row> net(String name) {
    return OBSERVED.stream().filter(r -> r.text("net").equals(name)).toList();
  }

  private static void assertPrinted(String net, String quantity, double found) {
    Row row =
        RESULTS.stream()
            .filter(r -> r.text("net").equals(net) && r.text("quantity").equals(quantity))
            .findFirst()
            .orElseThrow();
    Printed printed = row.printed("printed");
    assertThat(found)
        .as("%s of %s", quantity, net)
        .isCloseTo(printed.value(), within(printed.halfDigit() * 1.000001));
  }

  /** Heights in metres; sigmas of the rows are in millimetres. */
  private static LeastSquaresFit level(
      List<Row> net, Map<String, Double> known, List<String> unknown) {
    double[] observed = net.stream().mapToDouble(r -> r.number("observed_m")).toArray();
    double[] sigmas = net.stream().mapToDouble(r -> r.number("sigma_mm") / 1000).toArray();
    LeastSquares.Model model =
        x ->
            net.stream()
                .mapToDouble(
                    r ->
                        height(r.text("to"), known, unknown, x)
                            - height(r.text("from"), known, unknown, x))
                .toArray();
    double[] start = unknown.stream().mapToDouble(u -> 0).toArray();
    double[] steps = unknown.stream().mapToDouble(u -> 1).toArray();
    return LeastSquares.fit(model, observed, sigmas, start, steps);
  }

  private static double height(
      String point, Map<String, Double> known, List<String> unknown, double[] x) {
    return known.containsKey(point) ? known.get(point) : x[unknown.indexOf(point)];
  }

  @Test
  void levelsThereAndBack() {
    String name = "levels there and back";
    List<Row> net = net(name);
    List<String> unknown = List.of("4", "3", "2");
    LeastSquaresFit fit = level(net, Map.of("1a", 1000.0), unknown);
    for (int i = 0; i < 3; i++) {
      assertPrinted(name, "height " + unknown.get(i), fit.unknowns()[i]);
      assertPrinted(name, "sigma " + unknown.get(i), fit.sigmaOf(i) * 1000);
    }
    int largest = 0;
    double freedom = 0;
    for (int i = 0; i < net.size(); i++) {
      Printed adjusted = net.get(i).printed("adjusted_m");
      assertThat(net.get(i).number("observed_m") - fit.residual(i))
          .isCloseTo(adjusted.value(), within(adjusted.halfDigit() * 1.000001));
      freedom += fit.redundancy()[i];
      if (Math.abs(fit.normalised(i)) > Math.abs(fit.normalised(largest))) {
        largest = i;
      }
    }
    assertPrinted(name, "freedom", freedom);
    assertPrinted(name, "pvv", fit.chiSquare() * 25);
    assertPrinted(name, "variance factor root", 5 * Math.sqrt(fit.chiSquare() / freedom));
    assertPrinted(name, "largest normalised residual", Math.abs(fit.normalised(largest)));
    assertPrinted(name, "its observation", largest + 1);
  }

  @Test
  void levelsBetweenBenchmarks() {
    String name = "levels between benchmarks";
    Map<String, Double> known = Map.of("A", 10.021, "B", 10.321, "C", 11.002);
    LeastSquaresFit fit = level(net(name), known, List.of("E", "F"));
    double freedom = 0;
    for (double r : fit.redundancy()) {
      freedom += r;
    }
    ChiSquaredDistribution law = ChiSquaredDistribution.of(freedom);
    assertPrinted(name, "freedom", freedom);
    assertPrinted(name, "sum of squares", fit.chiSquare());
    assertPrinted(name, "error factor", Math.sqrt(fit.chiSquare() / freedom));
    assertPrinted(
        name, "chi-square root low", Math.sqrt(law.inverseCumulativeProbability(0.025) / freedom));
    assertPrinted(
        name, "chi-square root high", Math.sqrt(law.inverseCumulativeProbability(0.975) / freedom));
  }

  private static double misra(String row) {
    return MISRA.stream()
        .filter(r -> r.text("row").equals(row))
        .findFirst()
        .orElseThrow()
        .number("value");
  }

  /** From the farther of its two starting points. */
  @Test
  void nonlinearDataSet() {
    List<Row> data = MISRA.stream().filter(r -> r.text("row").equals("data")).toList();
    double[] x = data.stream().mapToDouble(r -> r.number("x")).toArray();
    double[] y = data.stream().mapToDouble(r -> r.number("value")).toArray();
    LeastSquares.Model model =
        b -> java.util.Arrays.stream(x).map(at -> b[0] * (1 - Math.exp(-b[1] * at))).toArray();
    double[] sigmas = java.util.Arrays.stream(y).map(v -> 1).toArray();
    double[] start = {misra("start b1"), misra("start b2")};
    LeastSquaresFit fit = LeastSquares.fit(model, y, sigmas, start, new double[] {1e-3, 1e-9});
    double factor = Math.sqrt(fit.chiSquare() / misra("freedom"));
    assertThat(fit.unknowns()[0] / misra("b1")).isCloseTo(1, within(1e-7));
    assertThat(fit.unknowns()[1] / misra("b2")).isCloseTo(1, within(1e-7));
    assertThat(fit.chiSquare() / misra("sum of squares")).isCloseTo(1, within(1e-7));
    assertThat(factor / misra("residual sigma")).isCloseTo(1, within(1e-7));
    assertThat(fit.sigmaOf(0) * factor / misra("sigma b1")).isCloseTo(1, within(1e-5));
    assertThat(fit.sigmaOf(1) * factor / misra("sigma b2")).isCloseTo(1, within(1e-5));
  }
}
