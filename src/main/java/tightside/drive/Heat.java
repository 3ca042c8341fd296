package tightside.drive;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.FaceCurve;

/**
 * A drive that warms up: everything that is bolted to the block moves apart with the block, the
 * chain grows by its own measure.
 *
 * @param coldCelsius the temperature at which the model's sizes hold
 * @param hotCelsius the temperature of block and chain at work
 * @param blockPerKelvin growth of the block, per kelvin
 * @param chainPerKelvin growth of the chain, per kelvin
 */
public record Heat(
    double coldCelsius, double hotCelsius, double blockPerKelvin, double chainPerKelvin) {

  /** Aluminium alloy, per kelvin: a handbook's round value, from memory. */
  public static final double ALUMINIUM = 23e-6;

  /** Grey cast iron, per kelvin: a handbook's round value, from memory. */
  public static final double CAST_IRON = 11e-6;

  /** Steel, per kelvin: a handbook's round value, from memory. */
  public static final double STEEL = 12e-6;

  /** A workshop's temperature, degrees Celsius; common practice, no source. */
  public static final double WORKSHOP = 20;

  /** A warm engine's block, degrees Celsius; from memory. */
  public static final double WARM = 90;

  public Heat {
    refuseOutside("a temperature", coldCelsius, -60, 300);
    refuseOutside("a temperature", hotCelsius, -60, 300);
    refuseOutside("growth per kelvin", blockPerKelvin, 0, 1e-4);
    refuseOutside("growth per kelvin", chainPerKelvin, 0, 1e-4);
  }

  private static void refuseOutside(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what + " lies from " + least + " to " + most + ", not " + value);
    }
  }

  public static Heat aluminiumBlock() {
    return new Heat(WORKSHOP, WARM, ALUMINIUM, STEEL);
  }

  public static Heat castIronBlock() {
    return new Heat(WORKSHOP, WARM, CAST_IRON, STEEL);
  }

  public double chainFactor() {
    return 1 + chainPerKelvin * (hotCelsius - coldCelsius);
  }

  public double blockFactor() {
    return 1 + blockPerKelvin * (hotCelsius - coldCelsius);
  }

  /** The same chain among shafts and faces that have moved apart with the block. */
  public ChainInPlace hot(ChainInPlace cold) {
    List<RouteEntry> route = cold.chain().route().stream().map(this::hot).toList();
    return new ChainInPlace(
        cold.chain().withRoute(route),
        cold.centres().stream().map(this::hot).toList(),
        cold.senses(),
        cold.travel());
  }

  private RouteEntry hot(RouteEntry entry) {
    if (entry instanceof Guide g) {
      return new Guide(g.name(), g.contact(), hot(g.curve()), g.seen());
    }
    if (entry instanceof Shoe s) {
      return new Shoe(s.name(), s.contact(), hot(s.curve()), s.plunger(), s.seen());
    }
    if (entry instanceof Arm a) {
      return new Arm(
          a.name(),
          a.contact(),
          hot(a.pivot()),
          hot(a.curve()),
          hot(a.pad()),
          a.plunger(),
          a.seen());
    }
    return entry;
  }

  private FaceCurve hot(FaceCurve curve) {
    return curve.moved(this::hot);
  }

  private Vector2D hot(Vector2D point) {
    return point.multiply(blockFactor());
  }
}
