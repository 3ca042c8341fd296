package tightside.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tightside.engine.Engine;
import tightside.engine.Squeeze;
import tightside.engine.TimedEngine;

/**
 * Compression as a share of what is expected: the closed ratio, raised to the exponent that
 * cranking is mostly reckoned with, over that of the engine with its camshafts right.
 */
record CompressionFactor(
    Engine engine, Map<String, Integer> places, double percent, double spreadPercent)
    implements Factor {

  static final double OPEN_PERCENT = 30;

  CompressionFactor {
    places = Map.copyOf(places);
  }

  /** What a gauge shows of what it should, percent. */
  double percentAt(double[] quantities) {
    Map<String, Double> advanced = new HashMap<>();
    places.forEach((shaft, place) -> advanced.put(shaft, quantities[place]));
    OptionalDouble right = TimedEngine.right(engine).squeeze().closed();
    OptionalDouble now = new TimedEngine(engine, advanced).squeeze().closed();
    return right.isEmpty() || now.isEmpty()
        ? 100
        : 100 * Math.pow(now.getAsDouble() / right.getAsDouble(), Squeeze.USUAL_EXPONENT);
  }

  @Override
  public double log(double[] quantities, Open open) {
    double at = open.everything() ? 100 : percentAt(quantities);
    double spread = open.everything() ? Math.hypot(OPEN_PERCENT, spreadPercent) : spreadPercent;
    double off = (percent - at) / spread;
    return -off * off / 2 - Math.log(spread * Math.sqrt(2 * Math.PI));
  }

  @Override
  public List<Double> breaks(double[] base, Curve curve) {
    return new ArrayList<>();
  }

  @Override
  public boolean heeds(Curve curve) {
    return places.values().stream().anyMatch(curve::moves);
  }

  @Override
  public double squaredApart(double[] one, Open oneOpen, double[] other, Open otherOpen) {
    if (oneOpen.everything() || otherOpen.everything()) {
      return 0;
    }
    double apart = (percentAt(one) - percentAt(other)) / spreadPercent;
    return apart * apart;
  }
}
