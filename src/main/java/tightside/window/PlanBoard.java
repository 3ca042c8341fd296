package tightside.window;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Finding;
import tightside.drive.Plan;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.drive.Tensioner;
import tightside.picture.DrivePicture;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.PlanPicture;
import tightside.session.Handle;
import tightside.session.PlanCheck;
import tightside.session.PlanEdits;
import tightside.session.PlanPart;
import tightside.session.SessionView;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * The drive as it is drawn, with a handle on every point that can be moved. It draws the chain as
 * soon as there is one, and puts a sign beside every part that keeps it from being laid.
 */
final class PlanBoard extends Region {

  private static final double REACH = 16;
  private static final double HANDLE = 4.5;

  private final Desk desk;
  private final Consumer<Handle> taken;
  private final Canvas canvas = new Canvas();
  private Plan plan;
  private PlanCheck check;
  private Optional<Handle> chosen = Optional.empty();
  private Picture picture;
  private Fit fit = new Fit(0, 0, 1);
  private boolean holding;
  private double type = 14;

  /**
   * @param taken is told of the handle that is laid hold of
   */
  PlanBoard(Desk desk, Consumer<Handle> taken) {
    this.desk = desk;
    this.taken = taken;
    getChildren().add(canvas);
    getStyleClass().add("picture");
    setId("plan-board");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(e -> letGo());
    setOnKeyPressed(this::key);
  }

  void show(SessionView view, PlanCheck found, Optional<Handle> handle) {
    Plan now = view.snapshot().plan();
    if (!now.equals(plan)) {
      plan = now;
      picture = null;
    }
    type = 12.5 * view.snapshot().look().textPercent() / 100;
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
      picture = drawn();
      if (!holding) {
        fit = Fit.of(picture.bounds(), width, height);
        picture = drawn();
        fit = Fit.of(picture.bounds(), width, height);
      }
    }
    paint(width, height);
  }

  private Picture drawn() {
    return check
        .drive()
        .map(
            drive ->
                DrivePicture.of(
                    Solver.of(drive).solve(State.reference()),
                    PictureOptions.labelled(Optional.empty(), 1)))
        .orElseGet(() -> PlanPicture.of(plan, type / fit.scale()));
  }

  private void paint(double width, double height) {
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, width, height);
    new Painter(g, fit, picture.lineMm()).paint(picture.shapes());
    check.drive().ifPresent(drive -> pushedBack(g));
    for (Handle handle : Handle.all(plan)) {
      handle(g, handle);
    }
    int number = 0;
    for (Finding finding : check.findings()) {
      number++;
      int shown = number;
      at(finding).ifPresent(point -> sign(g, point, shown, finding.error()));
    }
  }

  /** Lines through the points of what a plunger pushes, which is drawn as it stands. */
  private void pushedBack(GraphicsContext g) {
    g.setStroke(Color.web("#b3152b"));
    g.setLineWidth(1);
    g.setLineDashes(4, 3);
    List<Handle> handles = Handle.all(plan);
    for (int i = 1; i < handles.size(); i++) {
      Handle before = handles.get(i - 1);
      Handle next = handles.get(i);
      boolean pushed = next.part().entryIn(plan).filter(e -> e instanceof Tensioner).isPresent();
      if (pushed && next.part().equals(before.part())) {
        g.strokeLine(fit.x(before.at()), fit.y(before.at()), fit.x(next.at()), fit.y(next.at()));
      }
    }
  }

  private void handle(GraphicsContext g, Handle handle) {
    double x = fit.x(handle.at());
    double y = fit.y(handle.at());
    boolean own = chosen.filter(c -> same(c, handle)).isPresent();
    double half = own ? HANDLE + 2.5 : HANDLE;
    g.setLineDashes();
    g.setLineWidth(1.5);
    g.setFill(own ? Color.web("#b3152b") : Color.web("#fffefa"));
    g.setStroke(Color.web("#1d2930"));
    if (handle.kind() == Handle.Kind.CENTRE) {
      g.fillRect(x - half, y - half, 2 * half, 2 * half);
      g.strokeRect(x - half, y - half, 2 * half, 2 * half);
    } else {
      g.fillOval(x - half, y - half, 2 * half, 2 * half);
      g.strokeOval(x - half, y - half, 2 * half, 2 * half);
    }
  }

  private static boolean same(Handle a, Handle b) {
    return a.part().equals(b.part()) && a.kind() == b.kind();
  }

  /** Where the sign of a finding stands: at a point of its part. */
  private Optional<Vector2D> at(Finding finding) {
    Optional<PlanPart> part = PlanPart.of(finding.part());
    List<Handle> handles = Handle.all(plan);
    Optional<Handle> own =
        part.flatMap(
            p ->
                handles.stream()
                    .filter(h -> h.part().equals(p))
                    .filter(h -> h.kind() != Handle.Kind.START)
                    .findFirst());
    return own.map(Handle::at)
        .or(
            () ->
                part.flatMap(p -> p.in(plan) ? p.entryIn(plan) : Optional.empty())
                    .filter(e -> e instanceof Sprocket)
                    .flatMap(e -> plan.shaft(((Sprocket) e).shaft()))
                    .map(Shaft::at));
  }

  private void sign(GraphicsContext g, Vector2D point, int number, boolean error) {
    double size = type * 0.8;
    double x = fit.x(point) + 1.6 * size;
    double y = fit.y(point) - 1.6 * size;
    g.setFill(error ? Color.web("#9b1226") : Color.web("#f3d48f"));
    g.fillOval(x - size, y - size, 2 * size, 2 * size);
    g.setStroke(Color.web("#1d2930"));
    g.strokeOval(x - size, y - size, 2 * size, 2 * size);
    g.setFill(error ? Color.WHITE : Color.web("#1d2930"));
    g.setFont(Font.font("SansSerif", FontWeight.BOLD, type));
    g.setTextAlign(TextAlignment.CENTER);
    g.setTextBaseline(VPos.CENTER);
    g.fillText("" + number, x, y);
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
      move(fit.under(e.getX(), e.getY()));
    }
  }

  private void move(Vector2D to) {
    Vector2D tenths =
        Vector2D.of(Math.rint(to.getX() * 10) / 10 + 0.0, Math.rint(to.getY() * 10) / 10 + 0.0);
    chosen.ifPresent(handle -> desk.act(now -> PlanEdits.move(now, handle, tenths)));
  }

  private void letGo() {
    holding = false;
    picture = null;
    requestLayout();
  }

  private void key(KeyEvent e) {
    double step = e.isShiftDown() ? 0.1 : 1;
    boolean done = true;
    switch (e.getCode()) {
      case N -> next(1);
      case P -> next(-1);
      case LEFT -> nudge(-step, 0);
      case RIGHT -> nudge(step, 0);
      case UP -> nudge(0, step);
      case DOWN -> nudge(0, -step);
      default -> done = false;
    }
    if (done) {
      e.consume();
    }
  }

  private void nudge(double x, double y) {
    chosen.ifPresent(
        handle -> {
          if (handle.kind() == Handle.Kind.MARK) {
            Vector2D centre = centre(handle);
            Vector2D arm = centre.vectorTo(handle.at());
            double turn = Math.toRadians(-(x == 0 ? y : x));
            double cos = Math.cos(turn);
            double sin = Math.sin(turn);
            desk.act(
                now ->
                    PlanEdits.move(
                        now,
                        handle,
                        centre.add(
                            Vector2D.of(
                                arm.getX() * cos - arm.getY() * sin,
                                arm.getX() * sin + arm.getY() * cos))));
          } else {
            move(handle.at().add(Vector2D.of(x, y)));
          }
        });
  }

  private Vector2D centre(Handle mark) {
    String shaft = ((Sprocket) mark.part().entryIn(plan).orElseThrow()).shaft();
    return plan.shaft(shaft).orElseThrow().at();
  }

  private void next(int by) {
    List<Handle> handles = Handle.all(plan);
    if (handles.isEmpty()) {
      return;
    }
    int at = -1;
    for (int i = 0; i < handles.size(); i++) {
      Handle each = handles.get(i);
      at = chosen.filter(c -> same(c, each)).isPresent() ? i : at;
    }
    int next = at < 0 ? 0 : Math.floorMod(at + by, handles.size());
    taken.accept(handles.get(next));
  }
}
