package tightside.raster;

import java.util.EnumMap;
import java.util.Map;
import tightside.picture.Ink;
import tightside.picture.Plane;
import tightside.picture.Style;
import tightside.picture.Styles;
import tightside.picture.Tag;

/** The table of styles with its lengths in pixels. */
final class Brushes {

  /** How a style is drawn: its breadth of line, and its dash, empty for a whole line; pixels. */
  record Brush(Style style, double breadth, double[] dash) {

    /** Whether there is a fill and a whole line round it. */
    boolean rimmed() {
      return style.fill().isPresent() && style.line().isPresent() && dash.length == 0;
    }
  }

  private final Map<Plane, Map<Ink, Brush>> brushes = new EnumMap<>(Plane.class);

  /**
   * @param line breadth of a plain line, pixels
   */
  Brushes(double line) {
    for (Plane plane : Plane.values()) {
      Map<Ink, Brush> byInk = new EnumMap<>(Ink.class);
      for (Ink ink : Ink.values()) {
        Style style = Styles.of(ink, plane);
        double[] dash = style.dash().stream().mapToDouble(d -> d * line).toArray();
        byInk.put(ink, new Brush(style, style.weight() * line, dash));
      }
      brushes.put(plane, byInk);
    }
  }

  Brush of(Tag tag) {
    return brushes.get(tag.plane()).get(tag.ink());
  }
}
