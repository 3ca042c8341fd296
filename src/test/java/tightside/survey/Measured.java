package tightside.survey;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * A drive as somebody would measure it: what a true ruler reads of it, then with drawn errors.
 *
 * @param truth the drive as it is
 * @param exact what would be read without error
 */
public record Measured(Drive truth, List<Measurement> exact) {

  /**
   * Everything that a thorough hand takes: all distances between shafts and from every shaft of the
   * chain to the ends of its faces, chords and depths of faces, arms, marks from two shafts, pitch
   * and plunger.
   */
  public static Measured thorough(Drive truth) {
    List<Measurement> all = new ArrayList<>();
    List<String> shafts = truth.shafts().stream().map(Shaft::name).toList();
    for (int i = 0; i < shafts.size(); i++) {
      for (int j = i + 1; j < shafts.size(); j++) {
        all.add(
            length(SurveyPoint.shaft(shafts.get(i)), SurveyPoint.shaft(shafts.get(j)), Tool.RULER));
      }
    }
    for (Chain chain : truth.chains()) {
      List<String> on = chain.sprockets().stream().map(Sprocket::shaft).toList();
      for (RouteEntry entry : chain.route()) {
        if (entry instanceof Face face) {
          face(truth, chain, face, on, all);
        }
        if (entry instanceof Sprocket s && s.mark().isPresent()) {
          on.stream()
              .filter(other -> !other.equals(s.shaft()))
              .limit(2)
              .forEach(
                  other ->
                      all.add(
                          new Measurement.Mark(
                              chain.name(),
                              s.shaft(),
                              SurveyPoint.shaft(other),
                              Reading.by(Tool.PROTRACTOR, 0))));
        }
      }
      all.add(new Measurement.Pitches(chain.name(), 10, Reading.by(Tool.CALLIPER, 0)));
      all.add(new Measurement.Pitches(chain.name(), 12, Reading.by(Tool.CALLIPER, 0)));
      if (chain.tensioner().isPresent()) {
        all.add(new Measurement.Extension(chain.name(), Reading.by(Tool.RULER, 0)));
      }
    }
    return of(truth, all);
  }

  private static void face(
      Drive truth, Chain chain, Face face, List<String> on, List<Measurement> all) {
    SurveyPoint start = Proposals.point(truth, chain, face, Spot.START);
    SurveyPoint middle = Proposals.point(truth, chain, face, Spot.MIDDLE);
    SurveyPoint end = Proposals.point(truth, chain, face, Spot.END);
    for (String shaft : on.subList(0, Math.min(3, on.size()))) {
      all.add(length(SurveyPoint.shaft(shaft), start, Tool.RULER));
      all.add(length(SurveyPoint.shaft(shaft), end, Tool.RULER));
    }
    all.add(length(start, end, Tool.RULER));
    all.add(new Measurement.Offset(middle, start, end, Reading.by(Tool.RULER, 0)));
    if (face instanceof Arm) {
      SurveyPoint pivot = Proposals.point(truth, chain, face, Spot.PIVOT);
      SurveyPoint pad = Proposals.point(truth, chain, face, Spot.PAD);
      for (String shaft : on.subList(0, 2)) {
        all.add(length(SurveyPoint.shaft(shaft), pivot, Tool.RULER));
      }
      all.add(length(pivot, pad, Tool.CALLIPER));
      all.add(length(pad, start, Tool.CALLIPER));
      all.add(length(pivot, start, Tool.RULER));
      all.add(length(pivot, end, Tool.RULER));
    }
  }

  /** The least that tells the counts: shafts, faces of taut strands, one angle for each mark. */
  public static Measured sparing(Drive truth) {
    Measured all = thorough(truth);
    List<Measurement> some = new ArrayList<>();
    List<String> marked = new ArrayList<>();
    for (Measurement m : all.exact()) {
      if (m instanceof Measurement.Mark mark) {
        if (marked.contains(mark.chain() + mark.shaft())) {
          continue;
        }
        marked.add(mark.chain() + mark.shaft());
      }
      some.add(m);
    }
    return new Measured(truth, some);
  }

  public static Measurement length(SurveyPoint a, SurveyPoint b, Tool tool) {
    return Measurement.Distance.centres(a, b, Reading.by(tool, 0));
  }

  /** Measurements with what a true tool would read on a drive. */
  public static Measured of(Drive truth, List<Measurement> without) {
    Unknowns unknowns = new Unknowns(truth);
    double[] at = unknowns.all().stream().mapToDouble(Unknown::start).toArray();
    for (var chain : Solver.of(truth).solve(State.reference()).chains()) {
      int place = unknowns.place(chain.chain().name() + "/extension");
      if (place >= 0) {
        at[place] = chain.tensioner().orElseThrow().extensionMm();
      }
    }
    Site site = unknowns.at(at);
    return new Measured(
        truth,
        without.stream()
            .map(m -> m.with(m.reading().withValue(positive(m, Facts.read(site, m)))))
            .toList());
  }

  private static double positive(Measurement m, double value) {
    return m.angle() && value < 0 ? value + 360 : value;
  }

  /** The same with errors drawn from the stated uncertainties. */
  public List<Measurement> drawn(UniformRandomProvider random) {
    var normal = ZigguratSampler.NormalizedGaussian.of(random);
    return exact.stream().map(m -> moved(m, normal.sample() * m.reading().sigma())).toList();
  }

  /** A measurement that reads so much more. */
  public static Measurement moved(Measurement m, double by) {
    return m.with(m.reading().withValue(m.reading().value() + by));
  }

  /** A source of numbers that is the same every time. */
  public static UniformRandomProvider seeded(long seed) {
    return new java.util.SplittableRandom(seed)::nextLong;
  }
}
