package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.stage.Window;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.lesson.LessonRun;
import tightside.lesson.LessonSheet;
import tightside.picture.Bounds;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.Shape;
import tightside.session.SessionView;
import tightside.session.Snapshot;
import tightside.timing.Seat;
import tightside.timing.State;

/** The drive, drawn as large as there is room. It is drawn once a pulse at most. */
final class PictureCanvas extends Region {

  /** Size of the words in the picture at 100 %, pixels. */
  private static final double TEXT = 12.5;

  /** The drive is drawn no smaller than this share of its size without words. */
  private static final double LEAST_DRIVE = 0.66;

  /** As large as the drive lets them be to begin with; then smaller. */
  private static final double LARGEST_SCALE = 2.5;

  /** No line is thinner, pixels. */
  private static final double FINEST = 0.62;

  /** Room for the focus's own line round the picture, pixels. */
  private static final int EDGE = 2;

  private final Sheet sheet = new Sheet();
  private final Lettering lettering = new Lettering();
  private final Spotlight spotlight = new Spotlight();
  private final ObservableValue<Number> density;
  private SessionView view;
  private Picture picture;
  private Fit fit = new Fit(0, 0, 1);
  private Frame frame;
  private final List<Frame> frames = new ArrayList<>();
  private Captions captions;
  private boolean held;
  private Optional<SeenDrive> seen = Optional.empty();
  private double drawnWidth;
  private double drawnHeight;
  private Laid laid;
  private boolean wordless;

  /**
   * What the scale of the picture hangs on. It stays while the engine turns.
   *
   * @param seen all that was to be seen since
   * @param textScale of the words in the picture
   */
  private record Frame(
      Object drive, double width, double height, int textPercent, Bounds seen, double textScale) {

    boolean holds(Snapshot now, double otherWidth, double otherHeight) {
      return drive == now.drive()
          && width == otherWidth
          && height == otherHeight
          && textPercent == now.look().textPercent();
    }

    boolean like(Frame other) {
      return width == other.width && height == other.height && textPercent == other.textPercent;
    }

    Frame seeing(Bounds more) {
      Bounds all = seen.holds(more) ? seen : about(seen.centre().getX(), seen.with(more));
      return new Frame(drive, width, height, textPercent, all, textScale);
    }
  }

  /**
   * What the place of the sheet hangs on: while the crank turns nothing reaches farther than the
   * margin that bounds have.
   */
  private record Laid(
      Captions captions,
      State.Arrived arrived,
      Fit fit,
      double width,
      double height,
      Sheet.Place place) {

    boolean holds(
        Captions now, State.Arrived arriving, Fit at, double wide, double high, double dense) {
      return captions == now
          && arrived == arriving
          && fit.equals(at)
          && width == wide
          && height == high
          && place.density() == dense;
    }
  }

  PictureCanvas() {
    getChildren().addAll(sheet, lettering, spotlight);
    density =
        sceneProperty()
            .flatMap(Scene::windowProperty)
            .flatMap(Window::outputScaleXProperty)
            .orElse(1.0);
    density.addListener((o, before, after) -> drawAnew());
    getStyleClass().add("picture");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(160, 120);
  }

  /** Leaves out names and counts, here and in what is spoken, for a class that is to find them. */
  void withoutWords() {
    wordless = true;
  }

  void show(SessionView next) {
    view = next;
    drawAnew();
  }

  private void drawAnew() {
    picture = null;
    requestLayout();
  }

  /** Takes hold of the picture: it stays where it is, whatever is shown, until it is let go. */
  void hold() {
    held = true;
  }

  void letGo() {
    held = false;
    drawAnew();
  }

  /** The point of the drive under a pixel of this node, mm. */
  Vector2D under(double x, double y) {
    return fit.under(x, y);
  }

  Fit fit() {
    return fit;
  }

  /** How large the words in the picture are, pixels. */
  double emPixels() {
    return emMm(picture.shapes()) * fit.scale();
  }

  /** What was drawn last. */
  Optional<Picture> picture() {
    return Optional.ofNullable(picture);
  }

  @Override
  protected void layoutChildren() {
    double width = Math.floor(getWidth());
    double height = Math.floor(getHeight());
    if (view == null || width < 1 || height < 1) {
      return;
    }
    if (picture == null || drawnWidth != width || drawnHeight != height) {
      drawnWidth = width;
      drawnHeight = height;
      draw(width, height);
    }
  }

  private void draw(double width, double height) {
    Snapshot now = view.snapshot();
    if (now.sealed()) {
      sealed(now.lesson().orElseThrow().sheet(), now.look().textPercent(), width, height);
      return;
    }
    if (frame == null || !held && !frame.holds(now, width, height)) {
      frame = framedBefore(now, width, height).orElseGet(() -> framed(width, height));
      fit = Fit.of(frame.seen(), width, height);
      keep(frame);
    }
    Captions before = captions;
    picture = drawn(frame.textScale());
    if (captions != before && !held) {
      see(bounds(picture.shapes()), width, height);
    }
    setAccessibleText(picture.title() + (wordless ? "" : ". " + picture.description()));
    List<Shape> moving = captions.under(picture);
    double line = Math.max(FINEST, picture.lineMm() * fit.scale());
    lay(moving, width, height);
    sheet.draw(laid.place(), fit, line, moving);
    lettering.show(captions.words(), fit);
    spotlight.show(now, fit);
  }

  /** Lays the sheet under all that moves. */
  private void lay(List<Shape> moving, double width, double height) {
    State.Arrived arrived = view.snapshot().state().arrived();
    double dense = density.getValue().doubleValue();
    if (laid == null || !laid.holds(captions, arrived, fit, width, height, dense)) {
      Sheet.Place place = placed(bounds(moving), width, height, dense);
      laid = new Laid(captions, arrived, fit, width, height, place);
    }
  }

  private Sheet.Place placed(Bounds all, double width, double height, double dense) {
    int left = Math.max(EDGE, (int) Math.floor(fit.left() + fit.scale() * all.left()));
    int top = Math.max(EDGE, (int) Math.floor(fit.top() - fit.scale() * all.top()));
    double right = Math.min(width - EDGE, Math.ceil(fit.left() + fit.scale() * all.right()));
    double bottom = Math.min(height - EDGE, Math.ceil(fit.top() - fit.scale() * all.bottom()));
    return new Sheet.Place(left, top, (int) right - left, (int) bottom - top, dense);
  }

  /** Draws what a class may see, and nothing that is worked out for the session. */
  private void sealed(LessonSheet lesson, int percent, double width, double height) {
    seen = Optional.of(SeenDrive.of(seen, lesson, TEXT * percent / 100, height));
    picture = seen.get().picture();
    fit = Fit.of(picture.bounds(), width, height);
    frame = null;
    captions = null;
    laid = null;
    setAccessibleText(picture.title() + ". " + picture.description());
    Map<Boolean, List<Shape>> words =
        picture.shapes().stream().collect(Collectors.partitioningBy(Shape.Text.class::isInstance));
    double line = Math.max(FINEST, picture.lineMm() * fit.scale());
    double dense = density.getValue().doubleValue();
    Bounds all = bounds(words.get(false));
    sheet.draw(placed(all, width, height, dense), fit, line, words.get(false));
    lettering.show(words.get(true), fit);
    spotlight.setVisible(false);
  }

  /** The room is shared with what cards show large, and comes back when they are turned from. */
  private Optional<Frame> framedBefore(Snapshot now, double width, double height) {
    return frames.stream().filter(f -> f.holds(now, width, height)).findFirst();
  }

  private void keep(Frame newest) {
    frames.removeIf(f -> f.drive() != newest.drive() || f.like(newest));
    frames.add(newest);
  }

  /** Stays where it is as long as everything is in sight, for a hand may be holding it. */
  private void see(Bounds all, double width, double height) {
    if (!fit.sees(all, width, height)) {
      frame = frame.seeing(all);
      keep(frame);
      fit = Fit.of(frame.seen(), width, height);
    }
  }

  /**
   * Finds the size of the words: as large as all other text, or smaller where they would leave the
   * drive too little room.
   */
  private Frame framed(double width, double height) {
    Snapshot now = view.snapshot();
    int percent = now.look().textPercent();
    Bounds drive = bounds(drawn(0).shapes());
    double bare = Fit.of(drive, width, height).scale();
    double wanted = TEXT * percent / 100;
    if (wordless) {
      Bounds all = bounds(drawn(0).shapes());
      fit = Fit.of(all, width, height);
      return new Frame(now.drive(), width, height, percent, all, 1);
    }
    double scale = LARGEST_SCALE;
    Bounds seen = null;
    for (int i = 0; i < 14; i++) {
      List<Shape> shapes = drawn(scale).shapes();
      seen = about(drive.centre().getX(), bounds(shapes));
      double fits = Fit.of(seen, width, height).scale();
      double em = emMm(shapes) * fits;
      if (em <= 1.03 * wanted && fits >= LEAST_DRIVE * bare) {
        break;
      }
      scale *= em > wanted ? Math.max(0.5, wanted / em) : 0.87;
    }
    fit = Fit.of(seen, width, height);
    return new Frame(now.drive(), width, height, percent, seen, scale);
  }

  /** As far to the left as to the right, so that words do not push the drive aside. */
  private static Bounds about(double x, Bounds all) {
    double half = Math.max(x - all.left(), all.right() - x);
    return new Bounds(x - half, all.bottom(), x + half, all.top());
  }

  private static double emMm(List<Shape> shapes) {
    return shapes.stream()
        .filter(Shape.Text.class::isInstance)
        .mapToDouble(s -> ((Shape.Text) s).sizeMm())
        .max()
        .orElse(1);
  }

  private Picture drawn(double textScale) {
    PictureOptions options =
        PictureOptions.labelled(front(), textScale == 0 ? 1 : textScale)
            .seenWith(view.snapshot().cover())
            .paintedWith(painted());
    if (textScale == 0) {
      return Captions.none(view.solution(), options).over(view.solution());
    }
    if (captions == null || !captions.hold(view.solution(), options)) {
      captions =
          wordless
              ? Captions.none(view.solution(), options)
              : Captions.of(view.solution(), options);
    }
    return captions.over(view.solution());
  }

  /** A lesson's links were painted before it began, right or wrong. */
  private Map<Seat, Integer> painted() {
    return view.snapshot().lesson().map(LessonRun::painted).orElse(Map.of());
  }

  /** The chain that is selected lies in front. */
  private Optional<String> front() {
    return view.snapshot().look().selected().map(s -> s.chain());
  }

  private static Bounds bounds(List<Shape> shapes) {
    Bounds all = shapes.get(0).bounds();
    for (Shape shape : shapes) {
      Bounds next = shape.bounds();
      all = all.holds(next) ? all : all.with(next);
    }
    return all.grown(0.012 * Math.max(all.width(), all.height()));
  }
}
