package tightside.window;

import java.util.OptionalDouble;
import javafx.animation.AnimationTimer;
import tightside.session.Crank;
import tightside.session.Play;
import tightside.session.Turns;

/** Turns the engine by itself, at a speed that can be changed while it turns. */
final class Player {

  static final double SLOWEST = 6;
  static final double FASTEST = 360;
  static final double USUAL = 60;

  /** How fast it goes where it stops by itself. */
  private static final double THERE = 180;

  /** Two turns take two seconds and a half: fast enough to wait for, slow enough to follow. */
  static final double SWEEP = 288;

  private final Desk desk;
  private double speed = USUAL;
  private double from;
  private long since;
  private boolean running;

  /** Where it stops by itself. */
  private OptionalDouble until = OptionalDouble.empty();

  /** Whether it stops as soon as something else turns the engine. */
  private boolean yields;

  private Runnable whenStopped = () -> {};

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

  /**
   * Turns the engine on by an angle, to be watched, and stops there. Asked again on the way it
   * skips what is left of the first; whatever else turns the engine meanwhile ends it.
   *
   * @param degrees of the crank
   */
  void sweep(double degrees) {
    finish();
    if (desk.now().sealed()) {
      return;
    }
    turnTo(desk.now().crank().degrees() + degrees);
    yields = true;
  }

  /** Ends at once what stops by itself, where it would stop. */
  void finish() {
    OptionalDouble end = until;
    if (end.isPresent()) {
      stop();
      desk.act(now -> Turns.to(now, end.getAsDouble()));
    }
  }

  /** Calls back when the engine has stopped, whoever stopped it. */
  void whenStopped(Runnable what) {
    whenStopped = what;
  }

  void stop() {
    running = false;
    until = OptionalDouble.empty();
    yields = false;
    timer.stop();
    whenStopped.run();
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
    boolean turnedByOthers = since != 0 && desk.now().crank().degrees() != shown;
    if (turnedByOthers && yields) {
      stop();
      return;
    }
    if (since == 0 || turnedByOthers) {
      since = nanos;
      from = desk.now().crank().degrees();
    }
    double pace = yields ? SWEEP : until.isPresent() ? THERE : speed;
    double asked =
        Math.min(until.orElse(Double.POSITIVE_INFINITY), Play.angle(from, pace, nanos - since));
    desk.act(now -> Turns.to(now, asked));
    shown = desk.now().crank().degrees();
    boolean heldUp = shown != asked || yields && shown >= Crank.ANGLE.most();
    if (heldUp || until.isPresent() && shown >= until.getAsDouble()) {
      stop();
    }
  }
}
