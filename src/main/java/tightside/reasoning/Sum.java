package tightside.reasoning;

import java.util.stream.DoubleStream;

/** Terms of a double sum as they come. */
final class Sum {

  private final DoubleStream.Builder logs = DoubleStream.builder();
  private final DoubleStream.Builder first = DoubleStream.builder();
  private final DoubleStream.Builder second = DoubleStream.builder();

  void add(double log, double one, double other) {
    logs.add(log);
    first.add(one);
    second.add(other);
  }

  double[] logs() {
    return logs.build().toArray();
  }

  double[] first() {
    return first.build().toArray();
  }

  double[] second() {
    return second.build().toArray();
  }
}
