package tightside.print;

import java.util.List;
import java.util.Optional;
import tightside.drive.Seen;
import tightside.picture.Bounds;
import tightside.picture.DrivePicture;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.SeenPicture;
import tightside.picture.Shape;
import tightside.picture.Styles;
import tightside.picture.Svg;
import tightside.timing.Solution;
import tightside.words.Numbers;

/**
 * A drive drawn true to scale for a sheet of paper. Its words are apart from its lines, so that
 * they are printed in the page's own letters and can be searched.
 *
 * @param toScale not where a drive is counted only: then it is a schematic
 * @param counted whether the links of every run stand at it
 * @param widthMm on paper
 * @param heightMm on paper
 */
record ScaledDrawing(
    Scale scale,
    boolean toScale,
    boolean counted,
    double widthMm,
    double heightMm,
    String svg,
    List<Word> words) {

  /** Sizes of the words on paper, mm: 10 points, and a little less where that shows more drive. */
  private static final double[] TYPE_MM = {3.53, 3.3, 3.1};

  /** A drawing has a margin of its own, so it may reach into the page's by so much, mm. */
  private static final double OVER_MARGINS_MM = 14;

  /** Of a page, what stands above and below a drawing, mm. */
  private static final double AROUND_MM = 43;

  /** From the top of a line to its base line, in ems, in the page's letters. */
  private static final double BASE = 0.846;

  /** A line of words at its place; {@code style} is its place as a style. */
  record Word(String words, boolean heavy, String style) {}

  /** Words about every run make a drawing so much smaller at the most. */
  private static final double SMALLER_FOR_WORDS = 2.5;

  /**
   * The largest usual scale at which the drive fits; nothing where even the smallest is too large.
   * Where all that can be said about the runs would leave little room for a drive of many shafts,
   * only their names are written.
   */
  static Optional<ScaledDrawing> of(Solution solution, Paper paper) {
    Optional<ScaledDrawing> counted = of(solution, paper, true);
    if (solution.drive().countedOnly()) {
      return counted;
    }
    Optional<ScaledDrawing> named = of(solution, paper, false);
    boolean small =
        named.isPresent()
            && (counted.isEmpty()
                || counted.get().scale().oneTo() > SMALLER_FOR_WORDS * named.get().scale().oneTo());
    return small ? named : counted;
  }

  private static Optional<ScaledDrawing> of(Solution solution, Paper paper, boolean counted) {
    double size = size(solution);
    for (Scale scale : Scale.USUAL) {
      for (double type : TYPE_MM) {
        double textScale = type * scale.oneTo() * 66 / size;
        Picture picture =
            counted
                ? DrivePicture.of(solution, PictureOptions.labelled(Optional.empty(), textScale))
                : SeenPicture.of(
                    solution, solution, Seen.BORESCOPE, textScale, solution.drive().name());
        double width = scale.onPaperMm(picture.bounds().width());
        double height = scale.onPaperMm(picture.bounds().height());
        if (width <= paper.roomAcrossMm() + OVER_MARGINS_MM
            && height <= paper.roomDownMm() - AROUND_MM) {
          return Optional.of(
              of(picture, scale, !solution.drive().countedOnly(), counted, width, height));
        }
      }
    }
    return Optional.empty();
  }

  /**
   * The larger side of the drive without words, mm; the picture leaves 1.5 / 66 of it all round.
   */
  private static double size(Solution solution) {
    Bounds bounds = DrivePicture.of(solution, PictureOptions.full().withoutWords()).bounds();
    return Math.max(bounds.width(), bounds.height()) / (1 + 3.0 / 66);
  }

  private static ScaledDrawing of(
      Picture picture, Scale scale, boolean toScale, boolean counted, double width, double height) {
    List<Shape> lines = picture.shapes().stream().filter(s -> !(s instanceof Shape.Text)).toList();
    Picture bare =
        new Picture(
            lines, picture.bounds(), picture.lineMm(), picture.title(), picture.description());
    List<Word> words =
        picture.shapes().stream()
            .filter(Shape.Text.class::isInstance)
            .map(s -> word((Shape.Text) s, picture.bounds(), scale))
            .toList();
    return new ScaledDrawing(
        scale, toScale, counted, width, height, Svg.inline(bare, width), words);
  }

  private static Word word(Shape.Text text, Bounds bounds, Scale scale) {
    double size = scale.onPaperMm(text.sizeMm());
    double room = scale.onPaperMm(text.bounds().width()) * 1.4;
    double at = scale.onPaperMm(text.at().getX() - bounds.left());
    double left =
        switch (text.align()) {
          case LEFT -> at;
          case MIDDLE -> at - room / 2;
          case RIGHT -> at - room;
        };
    double top = scale.onPaperMm(bounds.top() - text.at().getY()) - BASE * size;
    String align =
        switch (text.align()) {
          case LEFT -> "left";
          case MIDDLE -> "center";
          case RIGHT -> "right";
        };
    String style =
        "left:%smm;top:%smm;width:%smm;font-size:%smm;text-align:%s"
            .formatted(mm(left), mm(top), mm(room), mm(size), align);
    return new Word(text.words(), Styles.of(text.tag()).bold(), style);
  }

  private static String mm(double value) {
    return Numbers.fixed(value, 3);
  }
}
