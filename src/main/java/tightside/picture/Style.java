package tightside.picture;

import java.util.List;
import java.util.Optional;

/**
 * How a kind of shape looks.
 *
 * @param fill nothing for shapes that are lines only
 * @param opacity of the fill, 0 to 1
 * @param line nothing for shapes without an outline
 * @param weight of the line, in the picture's line widths
 * @param dash lengths of dash and gap in turn, in the picture's line widths; empty for a whole line
 * @param bold whether text is heavy
 */
public record Style(
    Optional<Rgb> fill,
    double opacity,
    Optional<Rgb> line,
    double weight,
    List<Double> dash,
    boolean bold) {

  public Style {
    dash = List.copyOf(dash);
  }

  static Style filled(int fill) {
    return new Style(Optional.of(Rgb.of(fill)), 1, Optional.empty(), 0, List.of(), false);
  }

  static Style lined(int line, double weight) {
    return new Style(Optional.empty(), 1, Optional.of(Rgb.of(line)), weight, List.of(), false);
  }

  Style edged(int other, double otherWeight) {
    return new Style(fill, opacity, Optional.of(Rgb.of(other)), otherWeight, dash, bold);
  }

  Style clear(double otherOpacity) {
    return new Style(fill, otherOpacity, line, weight, dash, bold);
  }

  Style dashed(double on, double off) {
    return new Style(fill, opacity, line, weight, List.of(on, off), bold);
  }

  Style heavy() {
    return new Style(fill, opacity, line, weight, dash, true);
  }

  /** The same, faded toward the paper. */
  Style faded(Rgb paper, double share) {
    return new Style(
        fill.map(c -> c.mixed(paper, share)),
        opacity,
        line.map(c -> c.mixed(paper, share)),
        weight,
        dash,
        bold);
  }
}
