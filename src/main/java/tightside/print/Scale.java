package tightside.print;

import java.util.List;
import tightside.words.Numbers;

/**
 * How much smaller than the engine something is drawn.
 *
 * @param oneTo millimetres of the engine for one on paper
 */
record Scale(double oneTo) {

  /** Those that a technical drawing uses, the largest drawing first. */
  static final List<Scale> USUAL =
      List.of(
          new Scale(1),
          new Scale(2),
          new Scale(2.5),
          new Scale(5),
          new Scale(10),
          new Scale(20),
          new Scale(50),
          new Scale(100));

  private static final List<Integer> BARS_MM =
      List.of(10, 20, 50, 100, 200, 500, 1_000, 2_000, 5_000);

  /** A bar is at least so long on paper, mm. */
  private static final double BAR_LEAST_MM = 40;

  String words() {
    return "1 : " + Numbers.plain(oneTo);
  }

  double onPaperMm(double engineMm) {
    return engineMm / oneTo;
  }

  /**
   * What a scale bar stands for, mm of the engine: the shortest round length that is long enough.
   */
  int barMm() {
    return BARS_MM.stream().filter(mm -> onPaperMm(mm) >= BAR_LEAST_MM).findFirst().orElse(10_000);
  }

  /** The bar: five blocks, each other one filled, that are exactly as long as they say. */
  String bar() {
    double length = onPaperMm(barMm());
    StringBuilder bar =
        new StringBuilder(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" style=\"width:");
    bar.append(Numbers.plain(length)).append("mm;height:3mm\" viewBox=\"0 0 ");
    bar.append(Numbers.plain(length)).append(" 3\">");
    for (int block = 0; block < 5; block++) {
      double from = length * block / 5;
      bar.append("<rect class=\"scale-bar\" x=\"")
          .append(Numbers.fixed(from, 3))
          .append("\" y=\"0\" width=\"")
          .append(Numbers.fixed(length / 5, 3));
      bar.append("\" height=\"3\" fill=\"")
          .append(block % 2 == 0 ? "#000000" : "#bbbbbb")
          .append("\"/>");
    }
    return bar.append("</svg>").toString();
  }

  String barWords() {
    return "The bar is %d mm of the engine and must measure %s mm on this paper; if it does not, print again at 100 %%, without fitting to the page."
        .formatted(barMm(), Numbers.plain(onPaperMm(barMm())));
  }
}
