package tightside.timing;

import java.util.HashMap;
import java.util.Map;
import tightside.drive.Limits;

/**
 * All that can differ from the reference position of a new drive.
 *
 * @param crankDegrees how far the crankshaft has turned from the reference position in its running
 *     direction; whole turns count
 * @param arrived the way it was turned last
 * @param reseats teeth by which a sprocket was put back further ahead (+) or behind (-) on its
 *     chain
 * @param stretchPercent by chain; a chain not named is new
 * @param heldMm by chain: the extension at which its plunger is held; a chain not named has its
 *     plunger free
 */
public record State(
    double crankDegrees,
    Arrived arrived,
    Map<Seat, Integer> reseats,
    Map<String, Double> stretchPercent,
    Map<String, Double> heldMm) {

  /** The way the engine was turned last before it stopped. */
  public enum Arrived {
    /** In its running direction, without going back: what timing holds for. */
    FORWARD,
    /** Backwards: the pulled side has moved to the tensioner's strand. */
    BACKWARD
  }

  public State {
    reseats = Map.copyOf(reseats);
    stretchPercent = Map.copyOf(stretchPercent);
    heldMm = Map.copyOf(heldMm);
    if (!Double.isFinite(crankDegrees)) {
      throw new IllegalArgumentException("the crank angle must be finite, not " + crankDegrees);
    }
    for (double percent : stretchPercent.values()) {
      if (!Limits.STRETCH_PERCENT.allow(percent)) {
        throw new IllegalArgumentException("stretch lies from 0 to 10 %, not " + percent);
      }
    }
  }

  /** The reference position, new chains, everything on its tooth. */
  public static State reference() {
    return new State(0, Arrived.FORWARD, Map.of(), Map.of(), Map.of());
  }

  public State turnedTo(double otherCrankDegrees, Arrived way) {
    return new State(otherCrankDegrees, way, reseats, stretchPercent, heldMm);
  }

  /**
   * This state with one sprocket reseated by so many teeth from where it belongs; 0 puts it right.
   */
  public State reseated(Seat seat, int teeth) {
    Map<Seat, Integer> changed = new HashMap<>(reseats);
    if (teeth == 0) {
      changed.remove(seat);
    } else {
      changed.put(seat, teeth);
    }
    return new State(crankDegrees, arrived, changed, stretchPercent, heldMm);
  }

  public State stretched(String chain, double percent) {
    Map<String, Double> changed = new HashMap<>(stretchPercent);
    changed.put(chain, percent);
    return new State(crankDegrees, arrived, reseats, changed, heldMm);
  }

  public State held(String chain, double extensionMm) {
    Map<String, Double> changed = new HashMap<>(heldMm);
    changed.put(chain, extensionMm);
    return new State(crankDegrees, arrived, reseats, stretchPercent, changed);
  }

  public int teethAt(Seat seat) {
    return reseats.getOrDefault(seat, 0);
  }

  public double stretchOf(String chain) {
    return stretchPercent.getOrDefault(chain, 0.0);
  }
}
