package tightside.picture;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Curve;

/**
 * Writes a picture as a standalone SVG 1.1 document.
 *
 * <p>Every shape carries its ink as a class ({@code class="outer-plate"}), so that each link, tooth
 * and mark can be found; those in the back plane carry {@code back} too, and samples in the legend
 * are named apart ({@code class="legend-mark"}). Numbers are millimetres, y turned down. The same
 * picture always gives the same text.
 */
public final class Svg {

  private final Picture picture;
  private final int decimals;
  private final StringBuilder out = new StringBuilder(100_000);

  private Svg(Picture picture) {
    this.picture = picture;
    double size = Math.max(picture.bounds().width(), picture.bounds().height());
    decimals = size < 300 ? 3 : 2;
  }

  /**
   * @param width how wide the document says it is, in pixels of a style sheet
   */
  public static String write(Picture picture, int width) {
    return new Svg(picture).document(width);
  }

  /**
   * To stand in a page, drawn so many millimetres wide: without a prologue, and without a ground,
   * so that the paper shows.
   */
  public static String inline(Picture picture, double widthMm) {
    Svg svg = new Svg(picture);
    double heightMm = widthMm * picture.bounds().height() / picture.bounds().width();
    svg.out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" style=\"width:");
    Decimals.append(svg.out, widthMm, 3);
    svg.out.append("mm;height:");
    Decimals.append(svg.out, heightMm, 3);
    svg.out.append("mm\" viewBox=\"0 0 ");
    svg.number(picture.bounds().width()).append(' ');
    svg.number(picture.bounds().height()).append("\">\n");
    svg.groups();
    return svg.out.append("</svg>\n").toString();
  }

  private String document(int width) {
    Bounds bounds = picture.bounds();
    long height = Math.round(width * bounds.height() / bounds.width());
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"")
        .append(width)
        .append("\" height=\"")
        .append(height)
        .append("\" viewBox=\"0 0 ");
    number(bounds.width()).append(' ');
    number(bounds.height()).append("\">\n");
    out.append("<title>").append(escaped(picture.title())).append("</title>\n");
    out.append("<desc>").append(escaped(picture.description())).append("</desc>\n");
    out.append("<rect class=\"paper\" width=\"");
    number(bounds.width()).append("\" height=\"");
    number(bounds.height()).append("\" fill=\"").append(Styles.PAPER.hex()).append("\"/>\n");
    groups();
    return out.append("</svg>\n").toString();
  }

  /** Neighbours in the list that look alike share a group, which says once how they look. */
  private void groups() {
    Style open = null;
    boolean words = false;
    for (Shape shape : picture.shapes()) {
      Style style = Styles.of(shape.tag());
      if (style != open || words != shape instanceof Shape.Text) {
        words = shape instanceof Shape.Text;
        out.append(open == null ? "" : "</g>\n").append(group(style, words));
        open = style;
      }
      shape(shape);
    }
    out.append(open == null ? "" : "</g>\n");
  }

  private String group(Style style, boolean words) {
    StringBuilder group = new StringBuilder("<g fill=\"");
    group.append(style.fill().map(Rgb::hex).orElse("none")).append('"');
    if (style.opacity() < 1) {
      group.append(" fill-opacity=\"").append(Decimals.fixed(style.opacity(), 2)).append('"');
    }
    if (words) {
      group.append(" font-family=\"sans-serif\"");
      group.append(style.bold() ? " font-weight=\"bold\"" : "");
    } else if (style.line().isPresent()) {
      group.append(" stroke=\"").append(style.line().get().hex());
      group
          .append("\" stroke-width=\"")
          .append(Decimals.fixed(style.weight() * picture.lineMm(), 3));
      group.append("\" stroke-linejoin=\"round\"");
      dash(group, style.dash());
    }
    return group.append(">\n").toString();
  }

  private void dash(StringBuilder group, List<Double> dash) {
    if (!dash.isEmpty()) {
      group
          .append(" stroke-dasharray=\"")
          .append(
              dash.stream()
                  .map(length -> Decimals.fixed(length * picture.lineMm(), 3))
                  .collect(Collectors.joining(" ")))
          .append('"');
    }
  }

  private static String classOf(Tag tag) {
    String sample = tag.part().steps().isEmpty() ? "legend-" : "";
    return sample + tag.ink().slug() + (tag.plane() == Plane.BACK ? " back" : "");
  }

  private void shape(Shape shape) {
    String name = classOf(shape.tag());
    if (shape instanceof Shape.Circle circle) {
      out.append("<circle class=\"").append(name).append("\" cx=\"");
      x(circle.centre()).append("\" cy=\"");
      y(circle.centre()).append("\" r=\"");
      number(circle.radiusMm()).append("\"/>\n");
    } else if (shape instanceof Shape.Run run) {
      out.append("<path class=\"").append(name).append("\" d=\"");
      path(run);
      out.append("\"/>\n");
    } else {
      text((Shape.Text) shape, name);
    }
  }

  private void path(Shape.Run run) {
    List<Curve> curves = run.curves();
    out.append('M');
    point(curves.get(0).from());
    for (Curve curve : curves) {
      if (curve instanceof Curve.Arc arc) {
        out.append('A');
        number(arc.radiusMm()).append(' ');
        number(arc.radiusMm());
        out.append(Math.abs(arc.sweepDegrees()) > 180 ? " 0 1 " : " 0 0 ");
        out.append(arc.sweepDegrees() > 0 ? "1 " : "0 ");
      } else {
        out.append('L');
      }
      point(curve.to());
    }
    out.append(run.closed() ? "Z" : "");
  }

  private void text(Shape.Text text, String name) {
    out.append("<text class=\"").append(name).append("\" x=\"");
    x(text.at()).append("\" y=\"");
    y(text.at()).append("\" font-size=\"");
    number(text.sizeMm()).append('"');
    out.append(
        switch (text.align()) {
          case LEFT -> "";
          case MIDDLE -> " text-anchor=\"middle\"";
          case RIGHT -> " text-anchor=\"end\"";
        });
    out.append('>').append(escaped(text.words())).append("</text>\n");
  }

  private void point(Vector2D point) {
    x(point).append(' ');
    y(point);
  }

  private StringBuilder x(Vector2D point) {
    return number(point.getX() - picture.bounds().left());
  }

  private StringBuilder y(Vector2D point) {
    return number(picture.bounds().top() - point.getY());
  }

  private StringBuilder number(double value) {
    Decimals.append(out, value, decimals);
    return out;
  }

  /** Text as an XML document may hold it; what XML can't hold at all is left out. */
  public static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints()
        .filter(Svg::allowed)
        .forEach(
            letter -> {
              switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(letter);
              }
            });
    return safe.toString();
  }

  /** Char of XML 1.0, 2.2. */
  private static boolean allowed(int letter) {
    return letter == 9
        || letter == 10
        || letter == 13
        || letter >= 0x20 && letter <= 0xD7FF
        || letter >= 0xE000 && letter <= 0xFFFD
        || letter >= 0x10000;
  }
}
