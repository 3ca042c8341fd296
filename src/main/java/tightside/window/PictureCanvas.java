package tightside.window;

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

  /** No line is thinner, pixels. */
  private static final double FINEST = 0.62;

  private final Sheet sheet = new Sheet();
  private final Lettering lettering = new Lettering();
  private final Spotlight spotlight = new Spotlight();
  private final ObservableValue<Number> density;
  private SessionView view;
  private Picture picture;
  private Fit fit = new Fit(0, 0, 1);
  private Frame frame;
  private final Framing framing = new Framing();
  private Captions captions;
  private boolean held;
  private Optional<SeenDrive> seen = Optional.empty();
  private double drawnWidth;
  private double drawnHeight;
  private Laid laid;
  private boolean wordless;

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
    return Framing.emMm(picture.shapes()) * fit.scale();
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
      frame = framing.of(now, width, height, wordless, scale -> drawn(scale).shapes());
      fit = frame.fit();
    }
    Captions before = captions;
    picture = drawn(frame.textScale());
    if (captions != before && !held) {
      see(Framing.bounds(picture.shapes()), width, height);
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
      laid = Laid.under(moving, captions, arrived, fit, width, height, dense);
    }
  }

  /** Draws what a class may see, and nothing that is worked out for the session. */
  private void sealed(LessonSheet lesson, int percent, double width, double height) {
    seen = Optional.of(SeenDrive.of(seen, lesson, Framing.TEXT * percent / 100, height));
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
    Bounds all = Framing.bounds(words.get(false));
    sheet.draw(Laid.place(all, fit, width, height, dense), fit, line, words.get(false));
    lettering.show(words.get(true), fit);
    spotlight.setVisible(false);
  }

  /** Stays where it is as long as everything is in sight, for a hand may be holding it. */
  private void see(Bounds all, double width, double height) {
    if (!fit.sees(all, width, height)) {
      frame = frame.seeing(all);
      framing.keep(frame);
      fit = frame.fit();
    }
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
}
