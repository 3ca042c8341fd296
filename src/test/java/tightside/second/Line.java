package tightside.second;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The taut line round a loop: each stop with the directions in which the chain arrives and leaves.
 *
 * @param stops from the driving sprocket on; index is the place on the route
 */
public record Line(List<Stop> stops, double pitch) {

  /** A shape that is touched. */
  public record Stop(int index, Shape shape, double arriving, double leaving, Run next) {
    double turn() {
      return shape.turn(arriving, leaving);
    }

    double pitches() {
      return shape.pitches(arriving, leaving);
    }
  }

  /** Nothing where the line can't be drawn or misses a sprocket. */
  static Optional<Line> round(List<Shape> shapes, double pitch) {
    List<Integer> wheels = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      if (shapes.get(i) instanceof Round) {
        wheels.add(i);
      }
    }
    List<Integer> touched = new ArrayList<>();
    List<Run> runs = new ArrayList<>();
    for (int w = 0; w < wheels.size(); w++) {
      int last = w + 1 < wheels.size() ? wheels.get(w + 1) : shapes.size();
      Optional<Reach> reach = Reach.between(shapes, wheels.get(w), last);
      if (reach.isEmpty()) {
        return Optional.empty();
      }
      touched.addAll(reach.get().touched());
      runs.addAll(reach.get().runs());
    }
    return Optional.of(joined(shapes, touched, runs, pitch)).filter(Line::goesRoundOnce);
  }

  private static Line joined(
      List<Shape> shapes, List<Integer> touched, List<Run> runs, double pitch) {
    List<Stop> stops = new ArrayList<>();
    for (int i = 0; i < touched.size(); i++) {
      Run before = runs.get((i + runs.size() - 1) % runs.size());
      Run after = runs.get(i);
      Shape shape = shapes.get(touched.get(i));
      stops.add(new Stop(touched.get(i), shape, before.direction(), after.direction(), after));
    }
    return new Line(stops, pitch);
  }

  /**
   * A sprocket that the line misses would be turned round almost once more, and the runs before and
   * after it would cross.
   */
  private boolean goesRoundOnce() {
    double turned = stops.stream().mapToDouble(s -> s.shape().side() * s.turn()).sum();
    boolean once = Math.abs(Math.abs(turned) - 2 * Math.PI) < 1e-6;
    for (int i = 0; i < stops.size() && once; i++) {
      Run before = stops.get((i + stops.size() - 1) % stops.size()).next();
      once = stops.get(i).turn() <= Math.PI || !before.crosses(stops.get(i).next());
    }
    return once;
  }

  public double pitches() {
    return stops.stream().mapToDouble(s -> s.pitches() + s.next().length() / pitch).sum();
  }

  /**
   * Pitches from where the chain arrives at the driving sprocket to a tooth of a sprocket; counted
   * on beyond the wrapped part where the tooth lies there.
   */
  public double pitchesTo(int index, double bearing) {
    double before = 0;
    for (Stop stop : stops) {
      if (stop.index() == index) {
        Round wheel = (Round) stop.shape();
        double middle = stop.turn() / 2;
        double past =
            middle
                + Shape.near(
                    wheel.side() * (stop.arriving() - wheel.directionAt(bearing)) - middle);
        return before + past * wheel.teeth() / (2 * Math.PI);
      }
      before += stop.pitches() + stop.next().length() / pitch;
    }
    throw new IllegalArgumentException("no stop at " + index);
  }

  /** Bearing of the tooth of a sprocket that lies a part of the way along its wrap. */
  public double bearingAt(int index, double part) {
    Stop stop = stops.stream().filter(s -> s.index() == index).findFirst().orElseThrow();
    double side = stop.shape().side();
    double direction = stop.arriving() - side * part * stop.turn();
    return 90 - Math.toDegrees(direction + side * Math.PI / 2);
  }

  /** How far the chain turns round what stands at a place, degrees; 0 where it is not touched. */
  public double wrapDegrees(int index) {
    return stops.stream()
        .filter(s -> s.index() == index)
        .mapToDouble(s -> Math.toDegrees(s.turn()))
        .sum();
  }

  /** The straight run that leaves a sprocket. */
  public Run runFrom(int index) {
    return stops.stream().filter(s -> s.index() == index).findFirst().orElseThrow().next();
  }
}
