package tightside.raster;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import tightside.picture.Ink;
import tightside.picture.Plane;
import tightside.picture.Rgb;
import tightside.picture.Style;
import tightside.picture.Styles;
import tightside.picture.Tag;

/** The table of styles with its lengths in pixels. */
final class Brushes {

  /**
   * How a style is drawn.
   *
   * @param breadth of its line, pixels
   * @param dash empty for a whole line, pixels
   * @param rimmed its colours, where there is a fill and a whole line round it
   */
  record Brush(Style style, double breadth, double[] dash, Optional<Surface.Rimmed> rimmed) {

    static Brush of(Style style, double line) {
      double[] dash = style.dash().stream().mapToDouble(d -> d * line).toArray();
      Optional<Surface.Rimmed> rimmed =
          dash.length > 0
              ? Optional.empty()
              : style.fill().flatMap(fill -> style.line().map(rim -> rimmed(rim, fill, style)));
      return new Brush(style, style.weight() * line, dash, rimmed);
    }

    private static Surface.Rimmed rimmed(Rgb rim, Rgb fill, Style style) {
      return new Surface.Rimmed(
          Surface.rgb(rim), Surface.rgb(fill), (int) Math.round(256 * style.opacity()));
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
        byInk.put(ink, Brush.of(Styles.of(ink, plane), line));
      }
      brushes.put(plane, byInk);
    }
  }

  Brush of(Tag tag) {
    return brushes.get(tag.plane()).get(tag.ink());
  }
}
