package tightside.window;

import java.util.OptionalDouble;
import javafx.animation.AnimationTimer;
import tightside.session.Play;
import tightside.session.Turns;

/** Turns the engine by itself, at a speed that can be changed while it turns. */
final class Player {

  static final double SLOWEST = 6;
  static final double FASTEST = 360;
  static final double USUAL = 60;

  /** How fast it goes where it stops by itself. */
  private static final double THERE = 180;

  private final Desk desk;
  private double speed = USUAL;
  private double from;
  private long since;
  private boolean running;

  /** Where it stops by itself. */
  private OptionalDouble until = OptionalDouble.empty();

  /** The angle it turned to last; any other was turned to by hand meanwhile. */
  private double shown;

  private final AnimationTimer timer =
      new AnimationTimer() {
        @Override
        public void handle(long nanos) {
          tick(nanos);
        }
      };

  Player(Desk desk) {
    this.desk = desk;
  }

  boolean running() {
    return running;
  }

  void toggle() {
    if (running) {
      stop();
    } else if (!desk.now().sealed()) {
      running = true;
      since = 0;
      timer.start();
    }
  }

  /** Turns on to an angle and stops there. */
  void turnTo(double degrees) {
    stop();
    toggle();
    until = OptionalDouble.of(degrees);
  }

  void stop() {
    running = false;
    until = OptionalDouble.empty();
    timer.stop();
  }

  /**
   * @param degreesPerSecond of the crank
   */
  void speed(double degreesPerSecond) {
    speed = degreesPerSecond;
    since = 0;
  }

  /** Where the engine has got to by a moment of the clock. */
  void tick(long nanos) {
    if (since == 0 || desk.now().crank().degrees() != shown) {
      since = nanos;
      from = desk.now().crank().degrees();
    }
    double pace = until.isPresent() ? THERE : speed;
    shown = Math.min(until.orElse(Double.POSITIVE_INFINITY), Play.angle(from, pace, nanos - since));
    desk.act(now -> Turns.to(now, shown));
    shown = desk.now().crank().degrees();
    if (until.isPresent() && shown >= until.getAsDouble()) {
      stop();
    }
  }
}
