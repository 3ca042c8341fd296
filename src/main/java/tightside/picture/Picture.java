package tightside.picture;

import java.util.List;

/**
 * A picture: shapes in the order in which they are drawn.
 *
 * @param bounds all that is to be seen, a margin included
 * @param lineMm the width of a plain line, mm; the weights of {@link Style} are multiples of it
 * @param title what it is, in a few words
 * @param description what it shows, for those who can't see it
 */
public record Picture(
    List<Shape> shapes, Bounds bounds, double lineMm, String title, String description) {

  public Picture {
    shapes = List.copyOf(shapes);
    if (!(lineMm > 0)) {
      throw new IllegalArgumentException("lines need a width, not " + lineMm);
    }
  }
}
