package tightside.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.RealMatrix;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;

/**
 * What could be measured next, and what it would do for a count: of all that a ruler, a calliper or
 * a protractor reaches, the one that leaves the least variance. Doubt is part of the variance: a
 * measurement that nothing checks leaves its possible blunder in it, so that a check of it may be
 * worth more than another decimal.
 */
public final class Proposals {

  private final Unknowns unknowns;
  private final LeastSquaresFit fit;
  private final int measured;
  private final List<Measurement> candidates;
  private final double[][] rows;

  Proposals(Drive drive, Unknowns unknowns, LeastSquaresFit fit, int measured) {
    this.unknowns = unknowns;
    this.fit = fit;
    this.measured = measured;
    Site site = unknowns.at(fit.unknowns());
    candidates = new ArrayList<>();
    for (Measurement m : all(drive)) {
      double read = Facts.read(site, m);
      double shown = m.angle() && read < 0 ? read + 360 : read;
      candidates.add(m.with(m.reading().withValue(shown)));
    }
    rows = rows();
  }

  /** All that can be measured on a drive, each with its usual tool. */
  public static List<Measurement> all(Drive drive) {
    List<SurveyPoint> shafts =
        drive.shafts().stream().map(Shaft::name).map(SurveyPoint::shaft).toList();
    List<SurveyPoint> points = new ArrayList<>(shafts);
    List<Measurement> all = new ArrayList<>();
    for (Chain chain : drive.chains()) {
      for (RouteEntry entry : chain.route()) {
        if (entry instanceof Face face) {
          points.addAll(points(drive, chain, face));
          all.add(
              new Measurement.Offset(
                  point(drive, chain, face, Spot.MIDDLE),
                  point(drive, chain, face, Spot.START),
                  point(drive, chain, face, Spot.END),
                  Reading.by(Tool.RULER, 0)));
        }
        if (entry instanceof Sprocket s && s.mark().isPresent()) {
          for (SurveyPoint other : shafts) {
            if (!other.part().equals(s.shaft())) {
              Reading angle = Reading.by(Tool.PROTRACTOR, 0);
              all.add(new Measurement.Mark(chain.name(), s.shaft(), other, angle));
            }
          }
        }
      }
      all.add(new Measurement.Pitches(chain.name(), 10, Reading.by(Tool.CALLIPER, 0)));
      if (chain.tensioner().isPresent()) {
        all.add(new Measurement.Extension(chain.name(), Reading.by(Tool.RULER, 0)));
      }
    }
    for (int i = 0; i < points.size(); i++) {
      for (int j = i + 1; j < points.size(); j++) {
        Reading length = Reading.by(Tool.RULER, 0);
        all.add(Measurement.Distance.centres(points.get(i), points.get(j), length));
      }
    }
    return all;
  }

  private static List<SurveyPoint> points(Drive drive, Chain chain, Face face) {
    List<SurveyPoint> points = new ArrayList<>();
    points.add(point(drive, chain, face, Spot.START));
    points.add(point(drive, chain, face, Spot.END));
    if (face instanceof Arm) {
      points.add(point(drive, chain, face, Spot.PIVOT));
      points.add(point(drive, chain, face, Spot.PAD));
    }
    return points;
  }

  /** A point of a face by the shortest name that does. */
  static SurveyPoint point(Drive drive, Chain chain, Face face, Spot spot) {
    SurveyPoint alone = SurveyPoint.of(face.name(), spot);
    return alone.faces(drive).size() == 1
        ? alone
        : new SurveyPoint(Optional.of(chain.name()), face.name(), spot);
  }

  private double[][] rows() {
    double[] sigmas = candidates.stream().mapToDouble(m -> m.reading().sigma()).toArray();
    double[] steps = unknowns.all().stream().mapToDouble(Unknown::step).toArray();
    return LeastSquares.jacobian(this::read, fit.unknowns(), sigmas, steps).getData();
  }

  private double[] read(double[] at) {
    Site site = unknowns.at(at);
    return candidates.stream().mapToDouble(m -> Facts.read(site, m)).toArray();
  }

  /**
   * The best measurement for a count.
   *
   * @param slopes of the count with each unknown
   * @return nothing where none would take a tenth off its spread
   */
  Optional<Proposal> best(double[] slopes) {
    double[] qc = fit.covariance().operate(slopes);
    double before = doubted(fit.covariance(), slopes, -1);
    Proposal best = null;
    double least = 0.81 * before;
    for (int i = 0; i < candidates.size(); i++) {
      double[] row = rows[i];
      double[] qr = fit.covariance().operate(row);
      double gain = dot(row, qc);
      if (gain * gain < 1e-12) {
        continue;
      }
      RealMatrix after = fit.covariance().copy();
      double grown = 1 + dot(row, qr);
      for (int a = 0; a < qr.length; a++) {
        for (int b = 0; b < qr.length; b++) {
          after.addToEntry(a, b, -qr[a] * qr[b] / grown);
        }
      }
      double variance = doubted(after, slopes, i);
      if (variance < least) {
        least = variance;
        best = new Proposal(candidates.get(i), Math.sqrt(before), Math.sqrt(variance));
      }
    }
    return Optional.ofNullable(best);
  }

  /** The variance of a count, what a blunder in each measurement would add included. */
  private double doubted(RealMatrix q, double[] slopes, int candidate) {
    double variance = LeastSquaresFit.quadratic(q, slopes, slopes);
    double[] qc = q.operate(slopes);
    for (int i = 0; i < measured; i++) {
      variance += blunder(q, qc, fit.rows().getRow(i), fit.sigmas()[i]);
    }
    return candidate < 0
        ? variance
        : variance + blunder(q, qc, rows[candidate], candidates.get(candidate).reading().sigma());
  }

  private static double blunder(RealMatrix q, double[] qc, double[] row, double sigma) {
    double lambda = Doubt.enlarged(sigma);
    double r = Math.max(0, 1 - LeastSquaresFit.quadratic(q, row, row));
    double moved = dot(row, qc);
    return Doubt.BLUNDER_SHARE * lambda / (1 + lambda * r) * moved * moved;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
