package tightside.words;

import java.util.List;
import java.util.Optional;
import tightside.survey.Adjustment;
import tightside.survey.Checked;
import tightside.survey.Detection;
import tightside.survey.Measurement;
import tightside.survey.Proposal;
import tightside.survey.SureCount;
import tightside.survey.SurveyPoint;

/** What was measured on an engine and what follows from it, in sentences to act on. */
public final class SurveyWords {

  private SurveyWords() {}

  /** What a drive must be marked with until counts on the engine prove it. */
  public static Optional<String> notProved(Adjustment a) {
    if (a.proved()) {
      return Optional.empty();
    }
    return Optional.of(
        "Measured, not proved: this drive is only what ruler and callipers say."
            + " Count the links on the engine before you rely on it.");
  }

  /** What was measured, in a few words. */
  public static String measurement(Measurement m) {
    if (m instanceof Measurement.Distance d) {
      return switch (d.span()) {
        case CENTRES -> "from " + point(d.first()) + " to " + point(d.second());
        case OVER -> "over " + point(d.first()) + " and " + point(d.second());
        case BETWEEN -> "between " + point(d.first()) + " and " + point(d.second());
      };
    }
    if (m instanceof Measurement.Offset o) {
      return "%s off the line from %s to %s"
          .formatted(point(o.point()), point(o.from()), point(o.to()));
    }
    if (m instanceof Measurement.Pitches p) {
      return "over %d pitches of chain %s".formatted(p.pitches(), p.chain());
    }
    if (m instanceof Measurement.Extension e) {
      return "plunger of chain " + e.chain();
    }
    Measurement.Mark k = (Measurement.Mark) m;
    return "mark of %s on chain %s from the line to %s"
        .formatted(k.shaft(), k.chain(), point(k.from()));
  }

  private static String point(SurveyPoint point) {
    return point.toString();
  }

  /** A reading or an expectation with its unit. */
  public static String value(Measurement m, double value) {
    return m.angle()
        ? Numbers.fixed(value, 1) + " degrees"
        : Numbers.fixed(value, m.reading().sigma() < 0.1 ? 2 : 1) + " mm";
  }

  /** How far a measurement is from what all together say. */
  public static String residual(Checked c) {
    Measurement m = c.measurement();
    String read = "read " + value(m, m.reading().value());
    if (c.unchecked()) {
      return read + "; nothing checks this.";
    }
    double off = Math.abs(c.residual());
    int decimals = m.reading().sigma() < 0.1 ? 2 : 1;
    boolean none = Double.parseDouble(Numbers.fixed(off, decimals)) == 0;
    String by =
        none
            ? "just what the rest says"
            : value(m, off) + (c.residual() > 0 ? " more" : " less") + " than the rest says";
    boolean bad = Math.abs(c.normalised()) > Detection.CRITICAL;
    return read + ", " + by + (bad ? ": suspicious." : ".");
  }

  /** Whether the measurements agree with each other. */
  public static String global(Detection.Global g) {
    if (g.freedom() < 0.5) {
      return "Nothing was measured twice over: no test can tell whether it is right.";
    }
    String figures =
        "(chi-square %s with %s to spare; by chance alone it is as large in %s of 100 cases)"
            .formatted(
                Numbers.fixed(g.chiSquare(), 1),
                Numbers.fixed(g.freedom(), 1),
                Numbers.fixed(100 * g.probability(), g.probability() < 0.1 ? 1 : 0));
    return g.passed()
        ? "The measurements agree with each other as well as their uncertainties say "
            + figures
            + "."
        : "The measurements do not agree with each other as well as their uncertainties say "
            + figures
            + ": one is wrong, or they were taken less carefully than stated.";
  }

  /** The measurement that is probably wrong. */
  public static String suspect(Adjustment a) {
    if (a.suspect().isEmpty()) {
      return "No single measurement stands out.";
    }
    Checked c = a.suspect().get();
    double would = c.measurement().reading().value() - c.residual() / c.redundancy();
    return "Probably wrong: %s, read %s; without it the rest says %s (%s times its usual spread; past %s is suspicious). Measure it again."
        .formatted(
            measurement(c.measurement()),
            value(c.measurement(), c.measurement().reading().value()),
            value(c.measurement(), would),
            Numbers.fixed(Math.abs(c.normalised()), 1),
            Numbers.fixed(Detection.CRITICAL, 2));
  }

  /** How many measurements nothing checks. */
  public static Optional<String> unchecked(Adjustment a) {
    List<Checked> alone = a.measurements().stream().filter(Checked::unchecked).toList();
    return alone.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "%s checked by nothing: a slip in %s would not show. Read %s a second time."
                .formatted(
                    alone.size() == 1 ? "1 measurement is" : alone.size() + " measurements are",
                    alone.size() == 1 ? "it" : "one of them",
                    alone.size() == 1 ? "it" : "them"));
  }

  /** How sure a count is. */
  public static String sure(SureCount c) {
    String strand =
        "From the %s mark to the %s mark%s: "
            .formatted(
                c.strand().from(), c.strand().to(), c.strand().taut() ? "" : " (slack side)");
    if (!c.determined()) {
      return strand + "not to be told by what was measured." + counted(c);
    }
    return strand
        + "%s, %s sure (%s pitches, give or take %s)."
            .formatted(
                Numbers.count(c.links(), "link"),
                percent(c.probability()),
                Numbers.fixed(c.pitches(), 2),
                Numbers.fixed(c.sigma(), 2))
        + doubtful(c)
        + counted(c);
  }

  /** How sure a count is, in a few words. */
  public static String briefly(SureCount c) {
    String strand = c.strand().from() + " to " + c.strand().to();
    return c.determined()
        ? "%s: %s, %s sure"
            .formatted(strand, Numbers.count(c.links(), "link"), percent(c.probability()))
        : strand + ": not to be told by what was measured";
  }

  /** What there is to say beyond that. */
  public static String more(SureCount c) {
    String side = c.strand().taut() ? "" : "Slack side. ";
    String pitches =
        c.determined()
            ? "Mark to mark %s pitches, give or take %s."
                .formatted(Numbers.fixed(c.pitches(), 2), Numbers.fixed(c.sigma(), 2))
            : "";
    return (side + pitches + doubtful(c) + counted(c)).strip();
  }

  private static String doubtful(SureCount c) {
    if (c.sure()) {
      return "";
    }
    return c.odds().entrySet().stream()
        .filter(e -> e.getKey() != c.links())
        .max(java.util.Map.Entry.comparingByValue())
        .map(e -> " Not sure: it may be " + e.getKey() + " (" + percent(e.getValue()) + ").")
        .orElse("");
  }

  private static String counted(SureCount c) {
    if (c.counted().isEmpty()) {
      return "";
    }
    long n = c.counted().getAsLong();
    if (c.agrees()) {
      return " Counted on the engine: the same.";
    }
    return c.contradicted()
        ? " Counted on the engine: " + n + ". That can't both be right: count again, then measure."
        : " Counted on the engine: " + n + ".";
  }

  /** A probability that never claims to be certain. */
  public static String percent(double probability) {
    double hundred = 100 * probability;
    if (hundred >= 99.95) {
      return "more than 99.9 %";
    }
    return hundred < 0.1 ? "less than 0.1 %" : Numbers.fixed(hundred, 1) + " %";
  }

  /** What to measure next, and what it would do. */
  public static Optional<String> next(Adjustment a) {
    if (a.next().isEmpty()) {
      return Optional.empty();
    }
    SureCount count = a.next().get().count();
    String strand = "the count from %s to %s".formatted(count.strand().from(), count.strand().to());
    Optional<Proposal> proposal = a.next().get().proposal();
    if (proposal.isEmpty()) {
      return Optional.of(
          "No single measurement would make %s much surer: count it on the engine."
              .formatted(strand));
    }
    Measurement m = proposal.get().measurement();
    return Optional.of(
        "Measure next: %s, with a %s (about %s). It makes %s surer: its spread falls from %s to %s pitches."
            .formatted(
                measurement(m),
                m.reading().tool().name().toLowerCase(java.util.Locale.ROOT),
                value(m, m.reading().value()),
                strand,
                spread(proposal.get().spreadNow()),
                spread(proposal.get().spreadThen())));
  }

  private static String spread(double pitches) {
    return pitches > 2 ? "more than 2" : Numbers.fixed(pitches, 2);
  }
}
