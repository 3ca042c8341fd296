package tightside.files;

import java.util.ArrayList;
import java.util.List;
import tightside.survey.CountedLinks;
import tightside.survey.Measurement;
import tightside.survey.Reading;
import tightside.survey.Survey;
import tightside.survey.SurveyPoint;
import tightside.survey.Tool;

/** Writes measurements, one to a line. */
final class SurveyWriter {

  private SurveyWriter() {}

  static List<String> lines(Survey survey) {
    List<String> lines = new ArrayList<>();
    survey.measurements().forEach(m -> lines.add(measurement(m)));
    survey.counted().forEach(c -> lines.add(counted(c)));
    return lines;
  }

  private static String measurement(Measurement m) {
    Braces braces = new Braces();
    if (m instanceof Measurement.Distance d) {
      braces.with("distance", points(d.first(), d.second()));
      if (d.span() != Measurement.Span.CENTRES) {
        String diameters =
            "[" + YamlText.number(d.firstMm()) + ", " + YamlText.number(d.secondMm()) + "]";
        braces.with(Terms.of(d.span()), diameters);
      }
    } else if (m instanceof Measurement.Offset o) {
      braces.with("offset", YamlText.text(o.point().toString()));
      braces.with("line", points(o.from(), o.to()));
    } else if (m instanceof Measurement.Pitches p) {
      braces.with("pitches", Integer.toString(p.pitches())).with("chain", name(p.chain()));
    } else if (m instanceof Measurement.Extension e) {
      braces.with("extension", name(e.chain()));
    } else if (m instanceof Measurement.Mark k) {
      braces.with("mark", name(k.shaft())).with("chain", name(k.chain()));
      braces.with("from", YamlText.text(k.from().toString()));
    }
    Reading reading = m.reading();
    braces.with(m.angle() ? "degrees" : "mm", reading.value());
    Tool usual = SurveyDecoder.usual(m);
    braces.unless(usual, "by", reading.tool());
    reading.given().ifPresent(sigma -> braces.with("sigma", sigma));
    return braces.toString();
  }

  private static String counted(CountedLinks c) {
    return new Braces()
        .with("count", "[" + name(c.from()) + ", " + name(c.to()) + "]")
        .with("chain", name(c.chain()))
        .with("links", Long.toString(c.links()))
        .toString();
  }

  private static String name(String name) {
    return YamlText.text(name);
  }

  private static String points(SurveyPoint a, SurveyPoint b) {
    return "[" + YamlText.text(a.toString()) + ", " + YamlText.text(b.toString()) + "]";
  }
}
