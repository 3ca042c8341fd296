package tightside.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tightside.survey.Adjustment;
import tightside.survey.Checked;
import tightside.survey.Measurement;
import tightside.survey.Proposal;
import tightside.survey.SureCount;
import tightside.words.SurveyWords;

/** What was measured, as the command line's JSON has it. */
final class SurveyJson {

  private SurveyJson() {}

  /** An answer with a member {@code measured}. */
  static Map<String, Object> added(Map<String, Object> answer, Adjustment a) {
    Map<String, Object> more = new LinkedHashMap<>(answer);
    more.put("measured", measured(a));
    return more;
  }

  private static Map<String, Object> measured(Adjustment a) {
    return Json.object(
        "proved", a.proved(),
        "global",
            Json.object(
                "chiSquare", a.global().chiSquare(),
                "freedom", a.global().freedom(),
                "probability", a.global().probability(),
                "passed", a.global().passed()),
        "suspicious", a.suspect().map(SurveyJson::measurement).orElse(null),
        "counts", a.counts().stream().map(SurveyJson::count).toList(),
        "next", a.next().flatMap(Adjustment.Next::proposal).map(SurveyJson::next).orElse(null));
  }

  private static Map<String, Object> count(SureCount c) {
    Map<String, Object> odds = new LinkedHashMap<>();
    c.odds().entrySet().stream()
        .filter(e -> e.getValue() > 1e-6)
        .forEach(e -> odds.put(e.getKey().toString(), e.getValue()));
    boolean known = !Double.isNaN(c.pitches());
    return Json.object(
        "chain",
        c.strand().chain(),
        "from",
        c.strand().from(),
        "to",
        c.strand().to(),
        "pitches",
        known ? c.pitches() : null,
        "sigma",
        known ? c.sigma() : null,
        "links",
        c.determined() ? c.links() : null,
        "probability",
        c.determined() ? c.probability() : null,
        "sure",
        c.sure(),
        "odds",
        odds,
        "counted",
        c.counted().isPresent() ? c.counted().getAsLong() : null);
  }

  private static Map<String, Object> next(Proposal p) {
    return Json.object(
        "measure", SurveyWords.measurement(p.measurement()),
        "expected", p.measurement().reading().value(),
        "spreadNow", p.spreadNow(),
        "spreadThen", p.spreadThen());
  }

  static List<Map<String, Object>> measurements(Adjustment a) {
    return a.measurements().stream().map(SurveyJson::measurement).toList();
  }

  private static Map<String, Object> measurement(Checked c) {
    Measurement m = c.measurement();
    return Json.object(
        "measurement", c.place() + 1,
        "what", SurveyWords.measurement(m),
        "unit", m.angle() ? "degrees" : "mm",
        "read", m.reading().value(),
        "sigma", m.reading().sigma(),
        "adjusted", c.adjusted(),
        "residual", c.residual(),
        "normalised", c.unchecked() ? null : c.normalised(),
        "redundancy", c.redundancy(),
        "checked", !c.unchecked(),
        "smallestBlunderFound", c.unchecked() ? null : c.smallestFound());
  }

  /** Where the adjusted shafts stand, each with its standard uncertainty. */
  static List<Map<String, Object>> shafts(Adjustment a) {
    return a.best().shafts().stream()
        .map(s -> Json.object("shaft", s.name(), "x", s.at().getX(), "y", s.at().getY()))
        .toList();
  }
}
