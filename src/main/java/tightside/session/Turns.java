package tightside.session;

import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.Sprocket;
import tightside.words.Numbers;

/** Turning the crankshaft. Turns that follow each other are undone as one. */
public final class Turns {

  private static final String GESTURE = "turn";

  private Turns() {}

  /**
   * To an angle; a smaller one turns the engine back.
   *
   * @param degrees within {@link Crank#ANGLE}, or it stops there
   */
  public static Edit to(Snapshot now, double degrees) {
    double angle = Math.max(Crank.ANGLE.least(), Math.min(Crank.ANGLE.most(), degrees));
    return Edit.partOf(
        GESTURE,
        "Turn the crank to %s degrees".formatted(Numbers.fixed(angle, 1)),
        now.with(now.crank().turnedTo(angle)));
  }

  /** Whether a step turns the crankshaft, and does not set it somewhere. */
  static boolean turns(Edit step) {
    return step.gesture().filter(GESTURE::equals).isPresent();
  }

  public static Edit by(Snapshot now, double degrees) {
    return to(now, now.crank().degrees() + degrees);
  }

  /** By so many teeth of the crankshaft's sprocket: 360/z degrees each. */
  public static Edit byTeeth(Snapshot now, int teeth) {
    return by(now, teeth * 360.0 / crankTeeth(now));
  }

  /** After two turns of the crank a four-stroke engine, and every camshaft, stands as before. */
  public static Edit byTwoTurns(Snapshot now) {
    return by(now, 720);
  }

  /**
   * Back to the reference position as if it had never been left. The engine is set there, not
   * turned back to it.
   */
  public static Edit toReference(Snapshot now) {
    return Edit.single("Jump to the reference position", now.with(Crank.REFERENCE));
  }

  /** Teeth of the crankshaft's sprocket on the selected chain, or on the first that has one. */
  private static int crankTeeth(Snapshot now) {
    String crank = now.drive().crankshaft().name();
    Optional<String> selected = now.look().selected().map(Look.Selection::chain);
    return selected
        .flatMap(now.drive()::chain)
        .flatMap(chain -> chain.sprocketOn(crank))
        .orElseGet(() -> firstOn(now, crank))
        .teeth();
  }

  private static Sprocket firstOn(Snapshot now, String crank) {
    Chain chain = now.drive().chainsOn(crank).get(0);
    return chain.sprocketOn(crank).orElseThrow();
  }
}
