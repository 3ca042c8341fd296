package tightside.window;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import tightside.drive.Drive;
import tightside.drive.Plan;
import tightside.picture.DrivePicture;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.PlanPicture;
import tightside.picture.Shape;
import tightside.session.Handle;
import tightside.session.PlanCheck;
import tightside.session.SessionView;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * The drive as it is drawn, with a handle on every point that can be moved. It draws the chain as
 * soon as there is one, and puts a sign beside every part that keeps it from being laid.
 */
final class PlanBoard extends Region {

  private static final double REACH = 16;

  /** Size of its words at 100 %, pixels: as in the picture of the drive. */
  private static final double TYPE = 12.5;

  /** Tries to find the scale at which words come out as large as they should. */
  private static final int TRIES = 6;

  /** Beyond these words would leave the drive no room, or be lost in it. */
  private static final double LARGEST_SCALE = 2.5;

  private static final double SMALLEST_SCALE = 0.4;

  private final Consumer<Handle> taken;
  private final PlanKeys keys;
  private final Canvas canvas = new Canvas();
  private Plan plan;
  private PlanCheck check;
  private Optional<Handle> chosen = Optional.empty();
  private Picture picture;
  private Fit fit = new Fit(0, 0, 1);
  private double textScale = 1;
  private boolean holding;
  private double type = TYPE;

  /**
   * @param taken is told of the handle that is laid hold of
   */
  PlanBoard(Desk desk, Consumer<Handle> taken) {
    this.taken = taken;
    keys = new PlanKeys(desk, taken);
    getChildren().add(canvas);
    getStyleClass().add("picture");
    setId("plan-board");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(e -> letGo());
    setOnKeyPressed(e -> keys.press(e, plan, chosen));
  }

  void show(SessionView view, PlanCheck found, Optional<Handle> handle) {
    Plan now = view.snapshot().plan();
    double size = TYPE * view.snapshot().look().textPercent() / 100;
    if (!now.equals(plan) || size != type) {
      plan = now;
      type = size;
      picture = null;
    }
    check = found;
    chosen = handle;
    setAccessibleText(spoken());
    requestLayout();
  }

  private String spoken() {
    return plan.name()
        + ". "
        + chosen
            .map(
                h ->
                    "%s at %.1f, %.1f mm. The arrow keys move it."
                        .formatted(h.words(), h.at().getX(), h.at().getY()))
            .orElse("N and P choose a point.");
  }

  /** How large the words on the board are, pixels. */
  double emPixels() {
    return emMm(picture) * fit.scale();
  }

  @Override
  protected void layoutChildren() {
    double width = Math.floor(getWidth());
    double height = Math.floor(getHeight());
    if (plan == null || width < 1 || height < 1) {
      return;
    }
    if (canvas.getWidth() != width || canvas.getHeight() != height) {
      canvas.setWidth(width);
      canvas.setHeight(height);
      picture = null;
    }
    if (picture == null) {
      draw(width, height);
    }
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, width, height);
    new Painter(g, fit, picture.lineMm()).paint(picture.shapes());
    new PlanMarks(g, fit, plan, type).draw(check, chosen);
  }

  /** While a hand holds a point, all else stays where it is and as large as it is. */
  private void draw(double width, double height) {
    Optional<Solution> solution = check.drive().map(PlanBoard::solved);
    picture = drawn(solution);
    for (int i = 0; i < TRIES && !holding; i++) {
      fit = Fit.of(picture.bounds(), width, height);
      double wanted = textScale * type / (emMm(picture) * fit.scale());
      textScale = Math.max(SMALLEST_SCALE, Math.min(LARGEST_SCALE, wanted));
      picture = drawn(solution);
      fit = Fit.of(picture.bounds(), width, height);
    }
  }

  private static Solution solved(Drive drive) {
    return Solver.of(drive).solve(State.reference());
  }

  private Picture drawn(Optional<Solution> solution) {
    return solution
        .map(s -> DrivePicture.of(s, PictureOptions.labelled(Optional.empty(), textScale)))
        .orElseGet(() -> PlanPicture.of(plan, type / fit.scale()));
  }

  private static double emMm(Picture picture) {
    return picture.shapes().stream()
        .filter(Shape.Text.class::isInstance)
        .mapToDouble(s -> ((Shape.Text) s).sizeMm())
        .max()
        .orElse(1);
  }

  private void press(MouseEvent e) {
    requestFocus();
    Optional<Handle> near =
        Handle.all(plan).stream()
            .filter(h -> apart(h, e) < REACH)
            .min(Comparator.comparingDouble(h -> apart(h, e)));
    near.ifPresent(taken);
    chosen = near.or(() -> chosen);
    holding = near.isPresent();
  }

  private double apart(Handle handle, MouseEvent e) {
    return Math.hypot(fit.x(handle.at()) - e.getX(), fit.y(handle.at()) - e.getY());
  }

  private void drag(MouseEvent e) {
    if (holding) {
      chosen.ifPresent(handle -> keys.move(handle, fit.under(e.getX(), e.getY())));
    }
  }

  private void letGo() {
    holding = false;
    picture = null;
    requestLayout();
  }
}
