package tightside.picture;

import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Part;
import tightside.geometry.Bearing;
import tightside.geometry.Pose;

/** What the signs mean: a few samples with their names, under the drive. */
final class Legend {

  /**
   * A sign and what it is.
   *
   * @param shown whether a shape of the drive bears it
   * @param sample draws it round a point
   */
  private record Entry(Predicate<Tag> shown, BiConsumer<Draft, Vector2D> sample, String words) {}

  private final double em;

  private Legend(double em) {
    this.em = em;
  }

  /** Names the signs that have been drawn. */
  static void draw(Draft draft, double em) {
    Legend legend = new Legend(em);
    Set<Tag> drawn =
        draft.shapes().stream()
            .map(shape -> tag(shape.tag().ink(), shape.tag().plane()))
            .collect(Collectors.toSet());
    legend.flow(
        draft, legend.entries().stream().filter(e -> drawn.stream().anyMatch(e.shown())).toList());
  }

  private List<Entry> entries() {
    return List.of(
        entry(Ink.TIGHT, (d, at) -> line(d, at, Plane.FRONT, Ink.TIGHT), "tight side"),
        entry(Ink.SLACK, (d, at) -> line(d, at, Plane.FRONT, Ink.SLACK), "slack side"),
        entry(Ink.PAINTED_LINK, this::paintedLink, "painted link"),
        entry(Ink.MARK, (d, at) -> triangle(d, at, Ink.MARK, 0), "mark on the sprocket"),
        entry(Ink.POINTER, (d, at) -> triangle(d, at, Ink.POINTER, 180), "fixed mark"),
        entry(Ink.GHOST, (d, at) -> triangle(d, at, Ink.GHOST, 0), "where the mark belongs"),
        entry(Ink.NO_CHAIN, (d, at) -> line(d, at, Plane.FRONT, Ink.NO_CHAIN), "path, no chain"),
        new Entry(
            tag -> tag.plane() == Plane.BACK,
            (d, at) -> line(d, at, Plane.BACK, Ink.TIGHT),
            "chain behind, lighter"));
  }

  private static Entry entry(Ink ink, BiConsumer<Draft, Vector2D> sample, String words) {
    return new Entry(tag -> tag.ink() == ink, sample, words);
  }

  private static Tag tag(Ink ink, Plane plane) {
    return new Tag(ink, Part.whole(), plane);
  }

  private void line(Draft draft, Vector2D at, Plane plane, Ink ink) {
    Vector2D half = Vector2D.of(1.1 * em, 0);
    draft.line(tag(ink, plane), at.subtract(half), at.add(half));
  }

  private void paintedLink(Draft draft, Vector2D at) {
    Pose pose = new Pose(at, new Bearing(90));
    draft.closed(tag(Ink.PAINTED_LINK, Plane.FRONT), Plates.straight(em, 0.9 * em), pose);
    Plates.stripes(em, 0, 0.34 * em)
        .forEach(stripe -> draft.open(tag(Ink.PAINT_STRIPE, Plane.FRONT), stripe, pose));
  }

  private void triangle(Draft draft, Vector2D at, Ink ink, double bearing) {
    Vector2D tip = at.add(new Bearing(bearing).direction().multiply(0.45 * em));
    draft.arrowhead(tag(ink, Plane.FRONT), tip, new Bearing(bearing), 0.9 * em, 0.8 * em);
  }

  /** Row after row under what is drawn so far, each as wide as that is. */
  private void flow(Draft draft, List<Entry> entries) {
    Bounds above = draft.bounds();
    double x = above.left();
    double y = above.bottom() - 2.2 * em;
    for (Entry entry : entries) {
      double width = 3 * em + TextSize.widthMm(entry.words(), em);
      if (x > above.left() && x + width > above.right()) {
        x = above.left();
        y -= 1.7 * em;
      }
      entry.sample().accept(draft, Vector2D.of(x + 1.2 * em, y));
      Vector2D words = Vector2D.of(x + 2.7 * em, y - 0.35 * em);
      draft.text(tag(Ink.LABEL, Plane.FRONT), words, entry.words(), em, Shape.Align.LEFT);
      x += width + 1.2 * em;
    }
  }
}
