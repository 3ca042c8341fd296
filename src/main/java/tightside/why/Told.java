package tightside.why;

import tightside.picture.Bounds;
import tightside.picture.Picture;
import tightside.reasoning.Forced;
import tightside.words.ExplainWords;

/** What a picture of forced readings shows, in words. */
final class Told {

  private static final double LINE = 0.3;

  private Told() {}

  static Picture picture(Forced forced, Sketch sketch, Bounds all) {
    String up = forced.up().map(u -> "; up: " + u).orElse("");
    return new Picture(
        sketch.shapes(),
        all,
        LINE,
        "What each explanation forces, and what was read",
        "Across: %s%s, crank degrees, more to the right and up is advanced. %s"
            .formatted(forced.across(), up, told(forced)));
  }

  static String name(Forced.Line line) {
    return ExplainWords.brief(line.what()) + " " + ExplainWords.percent(line.probability());
  }

  private static String told(Forced forced) {
    Forced.Read read = forced.read();
    StringBuilder text =
        new StringBuilder("Read: " + pair(forced, read.x(), read.y()) + " crank degrees. ");
    for (Forced.Line line : forced.lines()) {
      Forced.Point near = nearest(forced.read(), line);
      text.append(
          "%s comes as near as %s. "
              .formatted(ExplainWords.brief(line.what()), pair(forced, near.x(), near.y())));
    }
    return text.toString().strip();
  }

  private static String pair(Forced forced, double x, double y) {
    return forced.across()
        + " "
        + ExplainWords.signed(x)
        + forced.up().map(u -> ", " + u + " " + ExplainWords.signed(y)).orElse("");
  }

  private static Forced.Point nearest(Forced.Read read, Forced.Line line) {
    Forced.Point best = line.points().get(0);
    for (Forced.Point point : line.points()) {
      if (apart(point, read) < apart(best, read)) {
        best = point;
      }
    }
    return best;
  }

  private static double apart(Forced.Point point, Forced.Read read) {
    return Math.hypot(
        (point.x() - read.x()) / read.spreadX(),
        read.spreadY() > 0 ? (point.y() - read.y()) / read.spreadY() : 0);
  }
}
