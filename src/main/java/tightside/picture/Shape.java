package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Curve;
import tightside.geometry.Pose;

/** Something to draw, in the drive's own millimetres, y up. */
public sealed interface Shape {

  Tag tag();

  /** The smallest upright rectangle round it, line weights left out. */
  Bounds bounds();

  /** A run of lines and arcs, each beginning where the one before it ends. */
  sealed interface Run extends Shape {

    /** One piece at least, mm. */
    List<Curve> curves();

    /**
     * Whether its end is joined to its beginning; an open one may be filled all the same, across
     * the chord, but has no line there.
     */
    boolean closed();

    @Override
    default Bounds bounds() {
      return Bounds.round(curves());
    }
  }

  /** A run that is the only one of its form. */
  record Path(Tag tag, List<Curve> curves, boolean closed) implements Run {

    public Path {
      curves = List.copyOf(curves);
      if (curves.isEmpty()) {
        throw new IllegalArgumentException("a path needs a piece at least");
      }
    }
  }

  /** One of many runs of the same form. */
  record Placed(Tag tag, Stencil stencil, Pose pose) implements Run {

    @Override
    public List<Curve> curves() {
      return stencil.curves().stream().map(curve -> curve.placed(pose)).toList();
    }

    @Override
    public boolean closed() {
      return stencil.closed();
    }
  }

  /** A whole circle. */
  record Circle(Tag tag, Vector2D centre, double radiusMm) implements Shape {

    public Circle {
      if (!(radiusMm > 0)) {
        throw new IllegalArgumentException("a circle needs a positive radius, not " + radiusMm);
      }
    }

    @Override
    public Bounds bounds() {
      return Bounds.at(centre).grown(radiusMm);
    }
  }

  /**
   * One line of upright text.
   *
   * @param at the point of its base line that the alignment names
   * @param sizeMm size of the type (em)
   */
  record Text(Tag tag, Vector2D at, String words, double sizeMm, Align align) implements Shape {

    @Override
    public Bounds bounds() {
      double width = TextSize.widthMm(words, sizeMm);
      double left =
          switch (align) {
            case LEFT -> at.getX();
            case MIDDLE -> at.getX() - width / 2;
            case RIGHT -> at.getX() - width;
          };
      return new Bounds(
          left,
          at.getY() - TextSize.DESCENT * sizeMm,
          left + width,
          at.getY() + TextSize.ASCENT * sizeMm);
    }
  }

  /** Which point of a line of text is given. */
  enum Align {
    LEFT,
    MIDDLE,
    RIGHT
  }
}
