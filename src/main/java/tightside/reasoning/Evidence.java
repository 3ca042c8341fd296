package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;

/** All that was read, in the order in which it was, and how far such readings stray. */
public record Evidence(List<Reading> readings, Spreads spreads) {

  public Evidence {
    readings = List.copyOf(readings);
  }

  public static Evidence of(Reading... readings) {
    return new Evidence(List.of(readings), Spreads.usual());
  }

  public Evidence and(Reading more) {
    List<Reading> all = new ArrayList<>(readings);
    all.add(more);
    return new Evidence(all, spreads);
  }

  public Evidence with(Spreads other) {
    return new Evidence(readings, other);
  }

  /** The first so many readings. */
  Evidence first(int count) {
    return new Evidence(readings.subList(0, count), spreads);
  }
}
