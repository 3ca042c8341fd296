package tightside.window;

import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;

/** A mouse that goes where the drive is, in millimetres. */
final class Mouse {

  private static final int STEPS = 12;

  private Mouse() {}

  static void press(Node node, double x, double y) {
    fire(node, MouseEvent.MOUSE_PRESSED, new Point2D(x, y));
    fire(node, MouseEvent.MOUSE_RELEASED, new Point2D(x, y));
  }

  /** Round a centre from one bearing to another, the shorter way. */
  static void drag(
      PictureCanvas picture, Vector2D centre, double radiusMm, double from, double to) {
    fire(picture, MouseEvent.MOUSE_PRESSED, at(picture, centre, radiusMm, from));
    for (int i = 1; i <= STEPS; i++) {
      double bearing = from + (to - from) * i / STEPS;
      fire(picture, MouseEvent.MOUSE_DRAGGED, at(picture, centre, radiusMm, bearing));
    }
    fire(picture, MouseEvent.MOUSE_RELEASED, at(picture, centre, radiusMm, to));
  }

  private static Point2D at(PictureCanvas picture, Vector2D centre, double radius, double bearing) {
    Vector2D point = centre.add(new Bearing(bearing).direction().multiply(radius));
    return new Point2D(picture.fit().x(point), picture.fit().y(point));
  }

  static void fire(Node node, EventType<MouseEvent> type, Point2D at) {
    Point2D inScene = node.localToScene(at);
    boolean down = type != MouseEvent.MOUSE_RELEASED;
    Event.fireEvent(
        node,
        new MouseEvent(
            type,
            inScene.getX(),
            inScene.getY(),
            inScene.getX(),
            inScene.getY(),
            MouseButton.PRIMARY,
            1,
            false,
            false,
            false,
            false,
            down,
            false,
            false,
            false,
            false,
            true,
            null));
  }

  static void scroll(Node node, double delta, boolean control) {
    Event.fireEvent(
        node,
        new ScrollEvent(
            ScrollEvent.SCROLL,
            10,
            10,
            10,
            10,
            false,
            control,
            false,
            false,
            false,
            false,
            0,
            delta,
            0,
            delta,
            ScrollEvent.HorizontalTextScrollUnits.NONE,
            0,
            ScrollEvent.VerticalTextScrollUnits.NONE,
            0,
            0,
            null));
  }
}
