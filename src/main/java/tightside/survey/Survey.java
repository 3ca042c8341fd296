package tightside.survey;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Drive;

/**
 * All that was measured and counted on an engine.
 *
 * @param measurements in the order in which a person wrote them
 * @param counted in that order too
 */
public record Survey(List<Measurement> measurements, List<CountedLinks> counted) {

  public Survey {
    measurements = List.copyOf(measurements);
    counted = List.copyOf(counted);
  }

  public static Survey of(List<Measurement> measurements) {
    return new Survey(measurements, List.of());
  }

  public boolean isEmpty() {
    return measurements.isEmpty() && counted.isEmpty();
  }

  public Survey plus(Measurement more) {
    List<Measurement> all = new ArrayList<>(measurements);
    all.add(more);
    return new Survey(all, counted);
  }

  public Survey with(int place, Measurement other) {
    List<Measurement> all = new ArrayList<>(measurements);
    all.set(place, other);
    return new Survey(all, counted);
  }

  public Survey without(int place) {
    List<Measurement> all = new ArrayList<>(measurements);
    all.remove(place);
    return new Survey(all, counted);
  }

  /** What of it a drive still has that was drawn otherwise since. */
  public Survey leftOn(Drive drive) {
    return Strangers.left(drive, this);
  }

  public Survey withCounted(List<CountedLinks> other) {
    return new Survey(measurements, other);
  }
}
