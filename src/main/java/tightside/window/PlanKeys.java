package tightside.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.input.KeyEvent;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Plan;
import tightside.drive.Sprocket;
import tightside.session.Handle;
import tightside.session.PlanEdits;

/**
 * The points of a drawn drive, chosen and moved by keys: N and P go from one to the next, arrows
 * move by a millimetre, or by a degree where a mark is meant, with Shift by a tenth of that.
 *
 * @param taken is told of the point that is chosen
 */
record PlanKeys(Desk desk, Consumer<Handle> taken) {

  void press(KeyEvent e, Plan plan, Optional<Handle> chosen) {
    double step = e.isShiftDown() ? 0.1 : 1;
    boolean done = true;
    switch (e.getCode()) {
      case N -> next(plan, chosen, 1);
      case P -> next(plan, chosen, -1);
      case LEFT -> nudge(plan, chosen, -step, 0);
      case RIGHT -> nudge(plan, chosen, step, 0);
      case UP -> nudge(plan, chosen, 0, step);
      case DOWN -> nudge(plan, chosen, 0, -step);
      default -> done = false;
    }
    if (done) {
      e.consume();
    }
  }

  private void next(Plan plan, Optional<Handle> chosen, int by) {
    List<Handle> handles = Handle.all(plan);
    if (handles.isEmpty()) {
      return;
    }
    int at = -1;
    for (int i = 0; i < handles.size(); i++) {
      Handle each = handles.get(i);
      at = chosen.filter(c -> PlanMarks.same(c, each)).isPresent() ? i : at;
    }
    taken.accept(handles.get(at < 0 ? 0 : Math.floorMod(at + by, handles.size())));
  }

  private void nudge(Plan plan, Optional<Handle> chosen, double x, double y) {
    chosen.ifPresent(
        handle -> {
          if (handle.kind() == Handle.Kind.MARK) {
            Vector2D to = turned(centre(plan, handle), handle.at(), x == 0 ? y : x);
            desk.act(now -> PlanEdits.move(now, handle, to));
          } else {
            move(handle, handle.at().add(Vector2D.of(x, y)));
          }
        });
  }

  /** A point turned clockwise round a centre. */
  private static Vector2D turned(Vector2D centre, Vector2D at, double degrees) {
    Vector2D arm = centre.vectorTo(at);
    double cos = Math.cos(Math.toRadians(-degrees));
    double sin = Math.sin(Math.toRadians(-degrees));
    return centre.add(
        Vector2D.of(arm.getX() * cos - arm.getY() * sin, arm.getX() * sin + arm.getY() * cos));
  }

  private static Vector2D centre(Plan plan, Handle mark) {
    String shaft = ((Sprocket) mark.part().entryIn(plan).orElseThrow()).shaft();
    return plan.shaft(shaft).orElseThrow().at();
  }

  /** Moves a point to tenths of a millimetre. */
  void move(Handle handle, Vector2D to) {
    Vector2D tenths =
        Vector2D.of(Math.rint(to.getX() * 10) / 10 + 0.0, Math.rint(to.getY() * 10) / 10 + 0.0);
    desk.act(now -> PlanEdits.move(now, handle, tenths));
  }
}
