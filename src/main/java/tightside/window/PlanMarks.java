package tightside.window;

import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
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
import tightside.session.Handle;
import tightside.session.PlanCheck;
import tightside.session.PlanPart;

/**
 * What lies over a drive that is drawn: a handle on every point that can be moved, and a numbered
 * sign at every part of which something is to be said.
 *
 * @param typePixels size of the words
 */
record PlanMarks(GraphicsContext g, Fit fit, Plan plan, double typePixels) {

  private static final double HANDLE = 4.5;

  void draw(PlanCheck check, Optional<Handle> chosen) {
    check.drive().ifPresent(drive -> pushedBack());
    for (Handle handle : Handle.all(plan)) {
      handle(handle, chosen.filter(c -> same(c, handle)).isPresent());
    }
    int number = 0;
    for (Finding finding : check.findings()) {
      number++;
      int shown = number;
      at(finding).ifPresent(point -> sign(point, shown, finding.error()));
    }
  }

  static boolean same(Handle a, Handle b) {
    return a.part().equals(b.part()) && a.kind() == b.kind();
  }

  /** Lines through the points of what a plunger pushes, which is drawn as it stands. */
  private void pushedBack() {
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

  private void handle(Handle handle, boolean own) {
    double x = fit.x(handle.at());
    double y = fit.y(handle.at());
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

  private void sign(Vector2D point, int number, boolean error) {
    double size = typePixels * 0.8;
    double x = fit.x(point) + 1.6 * size;
    double y = fit.y(point) - 1.6 * size;
    g.setFill(error ? Color.web("#9b1226") : Color.web("#f3d48f"));
    g.fillOval(x - size, y - size, 2 * size, 2 * size);
    g.setStroke(Color.web("#1d2930"));
    g.strokeOval(x - size, y - size, 2 * size, 2 * size);
    g.setFill(error ? Color.WHITE : Color.web("#1d2930"));
    g.setFont(Font.font("SansSerif", FontWeight.BOLD, typePixels));
    g.setTextAlign(TextAlignment.CENTER);
    g.setTextBaseline(VPos.CENTER);
    g.fillText("" + number, x, y);
  }
}
