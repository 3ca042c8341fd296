package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What each explanation forces on what is read of one or two camshafts, and what was read: a line
 * through points says more than a number.
 *
 * @param across the shaft whose reading goes to the right
 * @param up the shaft whose reading goes up; nothing where only one was read
 * @param lines what is forced, crank degrees, by the probability of what forces it
 * @param read what was read, and how far one spread reaches
 */
public record Forced(String across, Optional<String> up, List<Line> lines, Read read) {

  /** Explanations below this are not shown, but for those that are right or worn. */
  private static final double SHOWN = 0.01;

  private static final int MOST_LINES = 9;
  private static final int POINTS = 24;

  /**
   * What one explanation forces: one point, or several along a line, in the order of its amount.
   *
   * @param probability of the explanation
   */
  public record Line(Explanation what, double probability, List<Point> points) {
    public Line {
      points = List.copyOf(points);
    }
  }

  /** A pair of readings, crank degrees; {@code y} is 0 where only one shaft was read. */
  public record Point(double x, double y) {}

  /** What was read, the mean of all readings of a shaft, and its standard deviation. */
  public record Read(double x, double y, double spreadX, double spreadY) {}

  public Forced {
    lines = List.copyOf(lines);
  }

  /** Nothing where no camshaft was read by its sensor. */
  static Optional<Forced> of(
      DriveFaults faults, Evidence evidence, List<Hypothesis> all, List<Weighed> weighed) {
    List<String> shafts =
        evidence.readings().stream()
            .filter(r -> shaftOf(r).isPresent())
            .map(r -> shaftOf(r).orElseThrow())
            .distinct()
            .limit(2)
            .toList();
    if (shafts.isEmpty()) {
      return Optional.empty();
    }
    Quantities q = faults.quantities();
    List<Line> lines = new ArrayList<>();
    for (Weighed one : weighed) {
      Cause cause = one.what().cause();
      boolean always = cause == Cause.NONE || cause == Cause.STRETCH;
      boolean told = cause != Cause.SEVERAL && cause != Cause.OTHER;
      if (told && lines.size() < MOST_LINES && (always || one.probability() >= SHOWN)) {
        all.stream()
            .filter(h -> h.what().equals(one.what()))
            .findFirst()
            .map(h -> new Line(one.what(), one.probability(), points(faults, q, h, shafts)))
            .ifPresent(lines::add);
      }
    }
    double[] x = read(evidence, shafts.get(0));
    double[] y = shafts.size() > 1 ? read(evidence, shafts.get(1)) : new double[2];
    return Optional.of(
        new Forced(
            shafts.get(0),
            shafts.stream().skip(1).findFirst(),
            lines,
            new Read(x[0], y[0], x[1], y[1])));
  }

  private static Optional<String> shaftOf(Reading reading) {
    if (reading instanceof Reading.CamAngle angle && angle.condition().phaserFree()) {
      return Optional.of(angle.shaft());
    }
    return reading instanceof Reading.CamEdges edges
        ? Optional.of(edges.shaft())
        : Optional.empty();
  }

  private static double[] read(Evidence evidence, String shaft) {
    double sum = 0;
    double variance = 0;
    int count = 0;
    for (Reading reading : evidence.readings()) {
      if (!shaftOf(reading).equals(Optional.of(shaft))) {
        continue;
      }
      count++;
      if (reading instanceof Reading.CamAngle angle) {
        sum += angle.crankDegrees();
        variance += angle.spreadDegrees() * angle.spreadDegrees();
      } else if (reading instanceof Reading.CamEdges edges) {
        double n = edges.crankDegrees().size();
        sum += edges.crankDegrees().stream().mapToDouble(Double::doubleValue).sum() / n;
        variance += edges.spreadDegrees() * edges.spreadDegrees() / n;
      }
    }
    double own = variance / count / count;
    double sensor = evidence.spreads().sensorDegrees();
    double all = evidence.spreads().factor() * Math.sqrt(own + sensor * sensor);
    return new double[] {sum / count, all};
  }

  private static List<Point> points(
      DriveFaults faults, Quantities q, Hypothesis hypothesis, List<String> shafts) {
    List<Point> points = new ArrayList<>();
    if (hypothesis.amounts().isEmpty()) {
      points.add(point(q, hypothesis.fixedPart(faults.base()), shafts));
      return points;
    }
    Curve curve = hypothesis.amounts().get(0).curve();
    for (int i = 0; i <= POINTS; i++) {
      double[] quantities = hypothesis.fixedPart(faults.base());
      curve.addTo(quantities, curve.least() + (curve.most() - curve.least()) * i / POINTS);
      points.add(point(q, quantities, shafts));
    }
    return points;
  }

  private static Point point(Quantities q, double[] quantities, List<String> shafts) {
    return new Point(
        shown(q, quantities, shafts.get(0)),
        shafts.size() > 1 ? shown(q, quantities, shafts.get(1)) : 0);
  }

  private static double shown(Quantities q, double[] quantities, String shaft) {
    return quantities[q.turned(shaft)] + quantities[q.driven(shaft)] + quantities[q.wheel(shaft)];
  }
}
