package tightside.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.drive.Drive;
import tightside.drive.Part;
import tightside.files.ModelReader;
import tightside.geometry.Curve;
import tightside.picture.DrivePicture;
import tightside.picture.Ink;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.Plane;
import tightside.picture.Rgb;
import tightside.picture.Shape;
import tightside.picture.Style;
import tightside.picture.Styles;
import tightside.picture.Tag;
import tightside.timing.Solver;
import tightside.timing.State;

/** Pixels beside those of the Java platform's own antialiasing, and beside areas known exactly. */
class RasterTest {

  private static final int WIDTH = 640;
  private static final int HEIGHT = 480;
  private static final Rgb WHITE = Rgb.of(0xFFFFFF);

  /**
   * Steps of 255, mean of all channels: the platform samples each pixel 64 times, this one adds up
   * areas, sets small circles to a sixteenth of a pixel, and paints no fill under a rim.
   */
  private static final double ALIKE = 0.6;

  /** The same where hundreds of plates and teeth are set to an eighth of a pixel. */
  private static final double STAMPED = 0.85;

  private static Picture turned(String model, double crank) {
    Drive drive =
        ModelReader.read(Path.of("models", model + ".yaml")).model().orElseThrow().drive();
    return DrivePicture.of(
        Solver.of(drive).solve(State.reference().turnedTo(crank, State.Arrived.FORWARD)),
        PictureOptions.labelled(Optional.empty(), 1).withoutWords());
  }

  private static int[] drawn(List<Shape> shapes, double left, double top, double scale) {
    int[] pixels = new int[WIDTH * HEIGHT];
    Raster raster = new Raster(pixels, WIDTH, new Cuts());
    raster.lay(left, top, scale, 1);
    raster.paint(WHITE, shapes);
    return pixels;
  }

  private static Tag tag(Ink ink) {
    return new Tag(ink, Part.chain("main"), Plane.FRONT);
  }

  /** Darkness of all pixels together, in pixels wholly covered by a colour. */
  private static double covered(int[] pixels, Rgb colour) {
    double sum = 0;
    for (int pixel : pixels) {
      sum += (255 - (pixel & 255)) / (double) (255 - colour.blue());
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource({"3, 300.3, 200.7", "40.2, 320, 240", "150, 320.5, 239.25"})
  void aCircleCoversItsArea(double radius, double x, double y) {
    Rgb fill = Styles.of(tag(Ink.POINTER)).fill().orElseThrow();
    Shape circle = new Shape.Circle(tag(Ink.POINTER), Vector2D.of(x, -y), radius);
    double area = Math.PI * radius * radius;
    assertThat(covered(drawn(List.of(circle), 0, 0, 1), fill))
        .isEqualTo(area, within(0.005 * area + 0.3));
  }

  @Test
  void aLineCoversItsLengthTimesItsBreadthAndADashedOneLess() {
    Shape whole = line(Ink.TIGHT);
    Shape dashed = line(Ink.SLACK);
    Style tight = Styles.of(whole.tag());
    Style slack = Styles.of(dashed.tag());
    double length = Math.hypot(300, 200);
    double on = slack.dash().get(0) / (slack.dash().get(0) + slack.dash().get(1));
    assertThat(covered(drawn(List.of(whole), 0, 0, 1), tight.line().orElseThrow()))
        .isEqualTo(length * tight.weight(), within(6.0));
    assertThat(covered(drawn(List.of(dashed), 0, 0, 1), slack.line().orElseThrow()))
        .isEqualTo(on * length * slack.weight(), within(20.0));
  }

  private static Shape line(Ink ink) {
    Curve leg = new Curve.Line(Vector2D.of(100, -100), Vector2D.of(400, -300));
    return new Shape.Path(tag(ink), List.of(leg), false);
  }

  @ParameterizedTest
  @CsvSource({
    "v-six-two-stages, 0",
    "v-six-two-stages, 57.3",
    "two-cams-arm, 401.9",
    "counterclockwise-balancers, 12"
  })
  void aDriveLooksAsThePlatformDrawsIt(String model, double crank) {
    Picture picture = turned(model, crank);
    double scale = Math.min(WIDTH / picture.bounds().width(), HEIGHT / picture.bounds().height());
    double left = -picture.bounds().left() * scale;
    double top = picture.bounds().top() * scale;
    int[] ours = drawn(picture.shapes(), left, top, scale);
    int[] theirs = platform(picture.shapes(), left, top, scale);
    assertThat(difference(ours, new int[ours.length])).isGreaterThan(50);
    assertThat(difference(ours, theirs)).isLessThan(ALIKE);
  }

  @Test
  void whatReachesBeyondTheEdgesIsCutOffThere() {
    Picture picture = turned("two-cams-arm", 33);
    assertThat(
            difference(
                drawn(picture.shapes(), 100, 200, 9), platform(picture.shapes(), 100, 200, 9)))
        .isLessThan(ALIKE);
    int[] nothing = drawn(picture.shapes(), 90_000, 200, 9);
    assertThat(nothing).containsOnly(0xFFFFFFFF);
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 1.1", "-200, 90, 2.7", "60, -120, 0.4"})
  void whatIsLeftOutIsBare(double left, double top, double scale) {
    int[] pixels = new int[WIDTH * HEIGHT];
    Raster raster = new Raster(pixels, WIDTH, new Cuts());
    Picture picture = turned("v-six-two-stages", 77);
    for (int frame = 0; frame < 3; frame++) {
      raster.lay(left + 320, top + 400, scale, 1);
      List<Area> areas = raster.paint(WHITE, picture.shapes());
      int bare = 0;
      for (int i = 0; i < pixels.length; i++) {
        int x = i % WIDTH;
        int y = i / WIDTH;
        if (areas.stream().noneMatch(a -> holds(a, x, y))) {
          bare++;
          assertThat(pixels[i]).isEqualTo(0xFFFFFFFF);
        }
      }
      assertThat(bare).isPositive().isLessThan(pixels.length);
    }
  }

  private static boolean holds(Area area, int x, int y) {
    return x >= area.x()
        && x < area.x() + area.width()
        && y >= area.y()
        && y < area.y() + area.height();
  }

  @Test
  void platesAndTeethLieWhereTheyBelongWhetherStampedOrNot() {
    Picture picture = turned("v-six-two-stages", 123.4);
    double scale = 1.13;
    double left = 320;
    double top = 440;
    int[] pixels = new int[WIDTH * HEIGHT];
    Raster raster = new Raster(pixels, WIDTH, new Cuts());
    raster.lay(left, top, scale, 1);
    raster.paint(WHITE, picture.shapes());
    int[] drawn = pixels.clone();
    raster.paint(WHITE, picture.shapes());
    int[] stamped = pixels.clone();
    raster.paint(WHITE, picture.shapes());
    assertThat(pixels).isEqualTo(stamped);
    Raster roomless = new Raster(pixels, WIDTH, new Cuts(0));
    for (int frame = 0; frame < 2; frame++) {
      roomless.lay(left, top, scale, 1);
      roomless.paint(WHITE, picture.shapes());
      assertThat(pixels).as("no room for stamps").isEqualTo(drawn);
    }
    assertThat(stamped).isNotEqualTo(drawn);
    assertThat(difference(stamped, drawn)).isLessThan(STAMPED);
    assertThat(difference(stamped, platform(picture.shapes(), left, top, scale)))
        .isLessThan(STAMPED);
  }

  private static double difference(int[] ours, int[] theirs) {
    long sum = 0;
    for (int i = 0; i < ours.length; i++) {
      for (int shift = 0; shift < 24; shift += 8) {
        sum += Math.abs((ours[i] >> shift & 255) - (theirs[i] >> shift & 255));
      }
    }
    return sum / (3.0 * ours.length);
  }

  private static int[] platform(List<Shape> shapes, double left, double top, double scale) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, WIDTH, HEIGHT);
    for (Shape shape : shapes) {
      Style style = Styles.of(shape.tag());
      java.awt.Shape outline = outline(shape, left, top, scale);
      style.fill().ifPresent(fill -> fill(g, outline, fill, style.opacity()));
      style.line().ifPresent(line -> stroke(g, outline, line, style));
    }
    g.dispose();
    return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
  }

  private static void fill(Graphics2D g, java.awt.Shape outline, Rgb rgb, double opacity) {
    g.setColor(new Color(rgb.red(), rgb.green(), rgb.blue(), (int) Math.round(255 * opacity)));
    g.fill(outline);
  }

  private static void stroke(Graphics2D g, java.awt.Shape outline, Rgb rgb, Style style) {
    g.setColor(new Color(rgb.red(), rgb.green(), rgb.blue()));
    float[] dash = new float[style.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = style.dash().get(i).floatValue();
    }
    int cap = BasicStroke.CAP_BUTT;
    int join = BasicStroke.JOIN_BEVEL;
    float weight = (float) style.weight();
    g.setStroke(
        dash.length == 0
            ? new BasicStroke(weight, cap, join)
            : new BasicStroke(weight, cap, join, 10, dash, 0));
    g.draw(outline);
  }

  private static java.awt.Shape outline(Shape shape, double left, double top, double scale) {
    if (shape instanceof Shape.Circle circle) {
      double r = circle.radiusMm() * scale;
      double x = left + scale * circle.centre().getX();
      double y = top - scale * circle.centre().getY();
      return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }
    Shape.Run path = (Shape.Run) shape;
    Path2D outline = new Path2D.Double();
    Vector2D start = path.curves().get(0).from();
    outline.moveTo(left + scale * start.getX(), top - scale * start.getY());
    for (Curve curve : path.curves()) {
      for (int k = 1; k <= 64; k++) {
        Vector2D at = along(curve, k / 64.0);
        outline.lineTo(left + scale * at.getX(), top - scale * at.getY());
      }
    }
    if (path.closed()) {
      outline.closePath();
    }
    return outline;
  }

  private static Vector2D along(Curve curve, double share) {
    if (curve instanceof Curve.Arc arc) {
      return arc.centre()
          .add(arc.start().plus(share * arc.sweepDegrees()).direction().multiply(arc.radiusMm()));
    }
    return curve.from().lerp(curve.to(), share);
  }
}
