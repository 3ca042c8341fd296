package tightside.window;

import javafx.animation.AnimationTimer;
import tightside.session.Play;
import tightside.session.Turns;

/** Turns the engine by itself, at a speed that can be changed while it turns. */
final class Player {

  static final double SLOWEST = 6;
  static final double FASTEST = 360;
  static final double USUAL = 60;

  private final Desk desk;
  private double speed = USUAL;
  private double from;
  private long since;
  private boolean running;

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
    } else {
      running = true;
      since = 0;
      timer.start();
    }
  }

  void stop() {
    running = false;
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
    shown = Play.angle(from, speed, nanos - since);
    desk.act(now -> Turns.to(now, shown));
    shown = desk.now().crank().degrees();
  }
}
