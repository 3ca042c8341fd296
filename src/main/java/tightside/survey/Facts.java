package tightside.survey;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;

/**
 * What must hold of any drive, whatever is measured. Half speed needs no equation: the teeth are
 * whole numbers, and a drive whose camshafts turn otherwise is refused. Uncertainties of facts are
 * common practice, no source.
 */
final class Facts {

  /** A chain closes on its links within the play of its joints, pitches. */
  static final double CLOSES = 0.02;

  /** Slack of a chain without a tensioner: half a pitch at most, most likely a quarter. */
  private static final double SLACK_PITCHES = 0.25;

  /** A maker's marks meet whole links to a few hundredths of a pitch. */
  static final double WHOLE_PITCHES = 0.05;

  /** A pitch is its catalogue size, up to wear and tolerance. */
  private static final double PITCH_SHARE = 0.003;

  private Facts() {}

  static List<Equation> of(Drive drive, Survey survey) {
    List<Equation> facts = new ArrayList<>();
    for (Chain chain : drive.chains()) {
      facts.add(
          fact(
              s -> s.chain(chain.name()).pitchMm(),
              chain.pitchMm(),
              PITCH_SHARE * chain.pitchMm()));
      boolean tightened = chain.tensioner().isPresent();
      facts.add(
          fact(
              s -> loop(s, chain),
              chain.links() - (tightened ? 0 : SLACK_PITCHES),
              tightened ? CLOSES : SLACK_PITCHES));
      if (tightened && !read(survey, chain)) {
        double travel = chain.tensioner().orElseThrow().plunger().travelMm();
        facts.add(fact(s -> s.extensionMm().get(chain.name()), travel / 2, travel / Math.sqrt(12)));
      }
    }
    return facts;
  }

  private static Equation fact(
      java.util.function.ToDoubleFunction<Site> value, double observed, double sigma) {
    return new Equation(Equation.Kind.FACT, value, observed, sigma);
  }

  private static boolean read(Survey survey, Chain chain) {
    return survey.measurements().stream()
        .anyMatch(m -> m instanceof Measurement.Extension e && e.chain().equals(chain.name()));
  }

  /** Pitches of the loop; far off where no chain can be laid, so that no step leads there. */
  private static double loop(Site site, Chain chain) {
    double pitches = site.path(chain.name()).map(SiteChain::pitches).orElse(Double.NaN);
    return Double.isNaN(pitches) ? 2.0 * chain.links() : pitches;
  }

  /** A strand that has so many whole links. */
  static Equation whole(StrandPlan strand, long links) {
    return new Equation(
        Equation.Kind.WHOLE,
        site -> {
          double pitches = site.path(strand.chain()).map(p -> p.pitches(strand)).orElse(Double.NaN);
          return Double.isNaN(pitches) ? 2.0 * links : pitches;
        },
        links,
        WHOLE_PITCHES);
  }

  /** What a measurement says of a site. */
  static Equation of(Measurement m) {
    Reading r = m.reading();
    return new Equation(Equation.Kind.MEASURED, site -> read(site, m), r.value(), r.sigma());
  }

  /** What a measurement would read on a site, mm or degrees. */
  static double read(Site site, Measurement m) {
    if (m instanceof Measurement.Distance d) {
      return d.readAt(site.point(d.first()).distance(site.point(d.second())));
    }
    if (m instanceof Measurement.Offset o) {
      var line = site.point(o.from()).vectorTo(site.point(o.to()));
      return -line.signedArea(site.point(o.from()).vectorTo(site.point(o.point()))) / line.norm();
    }
    if (m instanceof Measurement.Pitches p) {
      return p.pitches() * site.chain(p.chain()).pitchMm();
    }
    if (m instanceof Measurement.Extension e) {
      return site.extensionMm().get(e.chain());
    }
    Measurement.Mark mark = (Measurement.Mark) m;
    Bearing line = Bearing.of(site.centre(mark.shaft()).vectorTo(site.point(mark.from())));
    double turn = line.turnTo(site.mark(mark.chain(), mark.shaft()), Rotation.CLOCKWISE);
    double read = mark.reading().value();
    return read + new Bearing(read).signedTurnTo(new Bearing(turn), Rotation.CLOCKWISE);
  }
}
