package tightside.readings;

import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import tightside.drive.Seen;

/** A compression test. */
public record Compression() implements Check {

  /** Part of the reading that a gauge and a battery leave in doubt; from memory. */
  public static final double DOUBT = 0.1;

  @Override
  public Kind kind() {
    return Kind.COMPRESSION;
  }

  @Override
  public Seen access(Situation situation) {
    return Seen.COVER_ON;
  }

  @Override
  public Optional<Shown> shows(Situation situation, Moment moment) {
    Optional<ToDoubleFunction<Map<String, Double>>> law = situation.bench().compression();
    return moment == Moment.BEFORE_TURNING
        ? Optional.empty()
        : law.map(f -> f.applyAsDouble(situation.crankDegrees()))
            .map(value -> new Shown(value, Shown.Unit.COMPRESSION));
  }

  @Override
  public double noticeable(Situation right, Shown reading) {
    return DOUBT * Math.abs(reading.value());
  }
}
