package tightside.window;

import java.util.List;
import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Drive;
import tightside.session.Lifting;
import tightside.session.Look;
import tightside.session.Turns;

/**
 * A hand on the picture. It turns the engine round the crank from anywhere but another sprocket;
 * another sprocket it lifts and sets over by whole teeth.
 */
final class PictureHand {

  private static final String HINT =
      "Drag to turn the crank, or roll the wheel: down turns it on, up back; with Ctrl by a tooth.";

  private static final double HINT_WIDTH = 260;

  private final PictureCanvas canvas;
  private final Desk desk;
  private Drive known;
  private List<Wheel> wheels = List.of();
  private Swing swing;
  private Lifting lifting;
  private long taken;

  /** Made when the hand is first over the picture, and put away once it has turned it. */
  private Optional<Tooltip> hint = Optional.empty();

  PictureHand(PictureCanvas canvas, Desk desk) {
    this.canvas = canvas;
    this.desk = desk;
    canvas.setOnMousePressed(this::take);
    canvas.setOnMouseDragged(this::go);
    canvas.setOnMouseReleased(e -> letGo());
    canvas.setOnMouseMoved(this::hint);
    canvas.setOnScroll(this::wheel);
  }

  private List<Wheel> wheels() {
    if (known != desk.now().drive()) {
      known = desk.now().drive();
      wheels = Wheel.all(known);
    }
    return wheels;
  }

  private Vector2D point(MouseEvent e) {
    return canvas.under(e.getX(), e.getY());
  }

  private Optional<Wheel> sprocketAt(Vector2D point) {
    return Wheel.at(wheels(), point).filter(w -> !w.crank());
  }

  private void take(MouseEvent e) {
    canvas.requestFocus();
    if (e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    Vector2D point = point(e);
    Optional<Wheel> sprocket = sprocketAt(point);
    Wheel crank = wheels().stream().filter(Wheel::crank).findFirst().orElseThrow();
    swing = new Swing(sprocket.orElse(crank), point);
    Optional<Look.Selection> selected =
        sprocket
            .map(Wheel::seat)
            .map(seat -> new Look.Selection(seat.chain(), Optional.of(seat.shaft())));
    desk.look(look -> look.selecting(selected));
    taken++;
    lifting = Lifting.begun(desk.now(), swing.wheel().seat(), taken);
    canvas.hold();
  }

  private void letGo() {
    swing = null;
    canvas.letGo();
  }

  private void go(MouseEvent e) {
    if (swing == null) {
      return;
    }
    knows();
    double step = swing.to(point(e));
    if (swing.wheel().crank()) {
      desk.act(now -> Turns.by(now, step));
    } else {
      desk.act(now -> lifting.to(now, swing.teeth()));
    }
  }

  private void knows() {
    hint.ifPresent(tip -> Tooltip.uninstall(canvas, tip));
  }

  private void hint(MouseEvent e) {
    if (hint.isEmpty()) {
      Tooltip tip = new Tooltip(HINT);
      tip.setWrapText(true);
      tip.setMaxWidth(HINT_WIDTH);
      Tooltip.install(canvas, tip);
      hint = Optional.of(tip);
    }
    canvas.setCursor(sprocketAt(point(e)).isPresent() ? Cursor.HAND : Cursor.OPEN_HAND);
  }

  /** Rolled down, toward the hand, it turns on, as a page goes on. */
  private void wheel(ScrollEvent e) {
    if (e.getDeltaY() != 0) {
      knows();
      int way = e.getDeltaY() < 0 ? 1 : -1;
      if (e.isControlDown()) {
        desk.act(now -> Turns.byTeeth(now, way));
      } else {
        desk.act(now -> Turns.by(now, way));
      }
      e.consume();
    }
  }
}
