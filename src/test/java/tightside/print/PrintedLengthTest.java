package tightside.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tightside.drive.Seen;
import tightside.picture.DrivePicture;
import tightside.picture.Ink;
import tightside.picture.PictureOptions;
import tightside.picture.Shape;
import tightside.sheet.JobSheet;
import tightside.sheet.Works;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * A millimetre drawn is a millimetre printed: the content of the PDF is measured, not the pages'
 * own word for it. Tolerance 0.1 %: a fifth of a millimetre on the page's width, less than paper
 * itself moves with the weather.
 */
class PrintedLengthTest {

  private static final double TOLERANCE = 0.001;

  @ParameterizedTest
  @EnumSource(Paper.class)
  void barAndDriveAreAsLongAsTheySay(Paper paper) {
    Solution solution =
        Solver.solve(Works.of("two-cams-arm.yaml", Seen.COVER_ON).drive(), State.reference());
    JobSheet sheet = JobSheet.of(Works.of("two-cams-arm.yaml", Seen.COVER_ON));
    Scale scale = ScaledDrawing.of(solution, paper).orElseThrow().scale();
    byte[] pdf = Pdf.of(SheetHtml.sheet(sheet, Optional.of(solution), paper, Optional.empty()));
    double bar = scale.onPaperMm(scale.barMm());
    List<Rectangle2D> filled = drawing(pdf, bar / 5);
    assertThat(barMm(filled, bar / 5)).isCloseTo(bar, within(bar * TOLERANCE));
    double apart = Math.hypot(52, 301.4) / scale.oneTo();
    assertThat(apart(filled, shaftMm(solution) / scale.oneTo()))
        .anySatisfy(mm -> assertThat(mm).isCloseTo(apart, within(apart * TOLERANCE)));
  }

  /** What is filled on the page that has the bar. */
  private static List<Rectangle2D> drawing(byte[] pdf, double block) {
    for (int page = 0; page < Pdf.pages(pdf); page++) {
      List<Rectangle2D> filled = drawn(pdf, page);
      if (!blocks(filled, block).isEmpty()) {
        return filled;
      }
    }
    throw new AssertionError("no page has a scale bar");
  }

  private static List<Rectangle2D> drawn(byte[] pdf, int page) {
    try {
      return Drawn.on(pdf, page);
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static List<Rectangle2D> blocks(List<Rectangle2D> filled, double block) {
    return filled.stream()
        .filter(r -> Math.abs(r.getHeight() - 3) < 0.05)
        .filter(r -> Math.abs(r.getWidth() - block) < 0.05 * block)
        .sorted(Comparator.comparing(Rectangle2D::getX))
        .toList();
  }

  /** From the first block of the bar, 3 mm high, to its last. */
  private static double barMm(List<Rectangle2D> filled, double block) {
    List<Rectangle2D> blocks = blocks(filled, block);
    assertThat(blocks).hasSize(5);
    return blocks.get(4).getMaxX() - blocks.get(0).getX();
  }

  private static double shaftMm(Solution solution) {
    return DrivePicture.of(solution, PictureOptions.full()).shapes().stream()
        .filter(s -> s.tag().ink() == Ink.SHAFT)
        .filter(Shape.Circle.class::isInstance)
        .mapToDouble(s -> 2 * ((Shape.Circle) s).radiusMm())
        .max()
        .orElseThrow();
  }

  /** The distances between all circles of about that size. */
  private static Stream<Double> apart(List<Rectangle2D> filled, double diameter) {
    List<Rectangle2D> round =
        filled.stream()
            .filter(r -> Math.abs(r.getWidth() - r.getHeight()) < 0.01 * r.getWidth())
            .filter(r -> r.getWidth() > 0.25 * diameter && r.getWidth() < 1.02 * diameter)
            .toList();
    return round.stream()
        .flatMap(
            a ->
                round.stream()
                    .map(
                        b ->
                            Math.hypot(
                                a.getCenterX() - b.getCenterX(), a.getCenterY() - b.getCenterY())));
  }
}
