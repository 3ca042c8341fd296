package tightside.window;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.canvas.GraphicsContext;
import tightside.picture.DrivePicture;
import tightside.picture.Ink;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.Shape;
import tightside.picture.Tag;
import tightside.session.SessionView;

/**
 * Over the drive, in dashes: where marks and painted links of the kept state stand, as far as they
 * stand elsewhere. Nothing of it is drawn while nothing is kept.
 */
final class GhostCanvas extends Overlay {

  private static final Set<Ink> SHOWN = EnumSet.of(Ink.MARK, Ink.PAINTED_LINK);

  /** Nearer than this to where it stands now, a part stands there, mm. */
  private static final double SAME_MM = 0.4;

  private Optional<SessionView> kept = Optional.empty();

  GhostCanvas(PictureCanvas under) {
    super(under);
  }

  void show(Optional<SessionView> next) {
    if (next.isPresent() || kept.isPresent()) {
      requestLayout();
    }
    kept = next;
  }

  @Override
  boolean empty() {
    return kept.isEmpty();
  }

  @Override
  void draw(GraphicsContext g, Fit fit, Picture now) {
    Picture before =
        DrivePicture.within(
            now,
            kept.orElseThrow().solution(),
            PictureOptions.labelled(Optional.empty(), 1).withoutWords());
    List<Shape> there = now.shapes().stream().filter(GhostCanvas::shown).toList();
    List<Shape> moved = new ArrayList<>();
    for (Shape shape : before.shapes()) {
      if (shown(shape) && there.stream().noneMatch(other -> same(shape, other))) {
        moved.add(outline(shape));
      }
    }
    new Painter(g, fit, now.lineMm()).paint(moved);
  }

  private static boolean shown(Shape shape) {
    return SHOWN.contains(shape.tag().ink());
  }

  private static boolean same(Shape one, Shape other) {
    return one.tag().ink() == other.tag().ink()
        && one.bounds().centre().distance(other.bounds().centre()) < SAME_MM;
  }

  private static Shape outline(Shape shape) {
    Tag tag = new Tag(Ink.BEFORE, shape.tag().part(), shape.tag().plane());
    return shape instanceof Shape.Run run ? new Shape.Path(tag, run.curves(), run.closed()) : shape;
  }
}
