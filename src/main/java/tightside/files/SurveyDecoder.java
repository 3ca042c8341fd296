package tightside.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Limits;
import tightside.drive.Shaft;
import tightside.survey.Adjustment;
import tightside.survey.CountedLinks;
import tightside.survey.Measurement;
import tightside.survey.Reading;
import tightside.survey.Strangers;
import tightside.survey.Survey;
import tightside.survey.SurveyPoint;
import tightside.survey.Tool;

/** Reads what was measured and counted on an engine, and adjusts the drive to it. */
final class SurveyDecoder {

  static final Limits MEASUREMENTS = new Limits(1, 400, "measurements");
  static final Limits DIAMETER_MM = new Limits(0, 1000, "mm");
  static final Limits PITCHES = new Limits(2, 200, "pitches");
  static final Limits STRAND_LINKS = new Limits(1, 2000, "links");

  private static final List<String> KINDS =
      List.of("distance", "offset", "pitches", "extension", "mark", "count");

  private final Drive drive;
  private final List<Measurement> measurements = new ArrayList<>();
  private final List<CountedLinks> counted = new ArrayList<>();

  private SurveyDecoder(Drive drive) {
    this.drive = drive;
  }

  /** The tool that is meant where none is named. */
  static Tool usual(Measurement m) {
    return m instanceof Measurement.Pitches
        ? Tool.CALLIPER
        : m.angle() ? Tool.PROTRACTOR : Tool.RULER;
  }

  static Optional<MeasuredDrive> measured(Value value, Drive drive) {
    SurveyDecoder decoder = new SurveyDecoder(drive);
    int before = value.complaints().errors();
    for (SectionReader s : Lists.sections(Optional.of(value), MEASUREMENTS)) {
      decoder.entry(s);
    }
    if (value.complaints().errors() > before) {
      return Optional.empty();
    }
    Survey survey = new Survey(decoder.measurements, decoder.counted);
    Optional<Adjustment> adjustment = Adjustment.of(drive, survey);
    if (adjustment.isEmpty()) {
      value.complainOfKey(Fault.MEASUREMENTS_ASTRAY, Map.of());
      return Optional.empty();
    }
    if (adjustment.get().drive().isEmpty()) {
      Map<String, Object> why =
          Map.of("why", Catalogue.sentence(adjustment.get().trouble().get(0)).replace(';', ','));
      value.complainOfKey(Fault.MEASUREMENTS_MAKE_NO_DRIVE, why);
      return Optional.empty();
    }
    return Optional.of(new MeasuredDrive(survey, adjustment.get()));
  }

  private void entry(SectionReader s) {
    List<String> kinds = s.keys();
    kinds.retainAll(KINDS);
    if (kinds.size() != 1) {
      complainOfKind(s, kinds);
      return;
    }
    SectionReader entry = s.called(kinds.get(0));
    switch (kinds.get(0)) {
      case "distance" -> distance(entry);
      case "offset" -> offset(entry);
      case "pitches" -> pitches(entry);
      case "extension" -> extension(entry);
      case "mark" -> mark(entry);
      default -> count(entry);
    }
  }

  private static void complainOfKind(SectionReader s, List<String> kinds) {
    if (!kinds.isEmpty()) {
      Map<String, Object> facts = Map.of("first", kinds.get(0), "second", kinds.get(1));
      s.may(kinds.get(1)).orElseThrow().complainOfKey(Fault.MEASUREMENT_OF_TWO_KINDS, facts);
      return;
    }
    s.complain(Fault.MEASUREMENT_WITHOUT_KIND, Map.of("known", KINDS));
  }

  private void distance(SectionReader s) {
    List<SurveyPoint> ends = points(s.need("distance"));
    Optional<Value> over = s.may("over");
    Optional<Value> between = s.may("between");
    if (over.isPresent() && between.isPresent()) {
      between.get().complainOfKey(Fault.SPAN_TWICE, Map.of());
    }
    Measurement.Span span =
        over.isPresent()
            ? Measurement.Span.OVER
            : between.isPresent() ? Measurement.Span.BETWEEN : Measurement.Span.CENTRES;
    List<Double> diameters = new ArrayList<>();
    for (Value one : Lists.pair(over.or(() -> between), "[40, 28.5]")) {
      Numbers.number(Optional.of(one), DIAMETER_MM).ifPresent(diameters::add);
    }
    Optional<Reading> reading = mm(s, Tool.RULER);
    if (s.sound() && ends.size() == 2) {
      boolean centres = span == Measurement.Span.CENTRES;
      measurements.add(
          new Measurement.Distance(
              ends.get(0),
              ends.get(1),
              span,
              centres ? 0 : diameters.get(0),
              centres ? 0 : diameters.get(1),
              reading.get()));
    }
  }

  private void offset(SectionReader s) {
    Optional<Value> value = s.need("offset");
    Optional<SurveyPoint> point = value.flatMap(this::point);
    Optional<Value> along = s.need("line");
    List<SurveyPoint> line = points(along);
    if (point.isPresent() && line.contains(point.get())) {
      value.get().complain(Fault.POINTS_THE_SAME);
    }
    Optional<Reading> reading = mm(s, Tool.RULER);
    if (s.sound()) {
      measurements.add(
          new Measurement.Offset(point.get(), line.get(0), line.get(1), reading.get()));
    }
  }

  private void pitches(SectionReader s) {
    Optional<Value> value = s.need("pitches");
    Optional<Integer> pitches = Numbers.count(value, PITCHES);
    if (pitches.isPresent() && pitches.get() % 2 != 0) {
      value.get().complain(Fault.PITCHES_ODD, Map.of("pitches", pitches.get()));
    }
    Optional<Chain> chain = chain(s, drive.chains());
    Optional<Reading> reading = mm(s, Tool.CALLIPER);
    if (s.sound()) {
      measurements.add(new Measurement.Pitches(chain.get().name(), pitches.get(), reading.get()));
    }
  }

  private void extension(SectionReader s) {
    Optional<Value> value = s.need("extension");
    Optional<Chain> chain = value.flatMap(this::known);
    if (chain.isPresent() && chain.get().tensioner().isEmpty()) {
      Map<String, Object> facts = Map.of("chain", chain.get().name());
      value.get().complain(Fault.MEASURED_WITHOUT_TENSIONER, facts);
    }
    Optional<Reading> reading = mm(s, Tool.RULER);
    if (s.sound()) {
      measurements.add(new Measurement.Extension(chain.get().name(), reading.get()));
    }
  }

  private void mark(SectionReader s) {
    Optional<Value> value = s.need("mark");
    Optional<String> shaft = Words.name(value);
    Optional<Chain> chain =
        chain(s, shaft.map(drive::chainsOn).filter(c -> !c.isEmpty()).orElse(drive.chains()));
    if (shaft.isPresent()
        && chain.isPresent()
        && !Strangers.marked(drive, chain.get().name(), shaft.get())) {
      value
          .get()
          .complain(
              Fault.MEASURED_WITHOUT_MARK,
              Map.of("chain", chain.get().name(), "shaft", shaft.get()));
    }
    Optional<Value> line = s.need("from");
    Optional<SurveyPoint> from = line.flatMap(this::point);
    if (from.isPresent() && shaft.isPresent() && from.get().equals(centre(shaft.get()))) {
      line.get().complain(Fault.POINTS_THE_SAME);
    }
    Optional<Double> degrees = Numbers.number(s.need("degrees"), Limits.BEARING_DEGREES);
    Optional<Reading> reading = reading(s, degrees, Tool.PROTRACTOR);
    if (s.sound()) {
      measurements.add(
          new Measurement.Mark(chain.get().name(), shaft.get(), from.get(), reading.get()));
    }
  }

  private static SurveyPoint centre(String shaft) {
    return SurveyPoint.shaft(shaft);
  }

  private void count(SectionReader s) {
    Optional<Value> value = s.need("count");
    List<String> ends = new ArrayList<>();
    for (Value one : Lists.pair(value, "[intake, exhaust]")) {
      Words.name(Optional.of(one)).ifPresent(ends::add);
    }
    Optional<Chain> chain = chain(s, drive.chains());
    Optional<Integer> links = Numbers.count(s.need("links"), STRAND_LINKS);
    if (ends.size() == 2 && chain.isPresent() && links.isPresent()) {
      CountedLinks c = new CountedLinks(chain.get().name(), ends.get(0), ends.get(1), links.get());
      if (!Strangers.strandOf(drive, c)) {
        value
            .get()
            .complain(
                Fault.STRAND_UNKNOWN, Map.of("chain", c.chain(), "from", c.from(), "to", c.to()));
      } else if (counted.stream()
          .anyMatch(o -> o.chain().equals(c.chain()) && o.from().equals(c.from()))) {
        value.get().complain(Fault.STRAND_COUNTED_TWICE);
      }
      if (s.sound()) {
        counted.add(c);
      }
    } else {
      s.sound();
    }
  }

  /** The chain that a key names, or the only one that can be meant. */
  private Optional<Chain> chain(SectionReader s, List<Chain> possible) {
    Optional<Value> value = s.may("chain");
    if (value.isPresent()) {
      return value.flatMap(this::known);
    }
    if (possible.size() == 1) {
      return Optional.of(possible.get(0));
    }
    List<String> known = possible.stream().map(Chain::name).toList();
    s.complain(Fault.MEASURED_CHAIN_MISSING, Map.of("known", known));
    return Optional.empty();
  }

  private Optional<Chain> known(Value value) {
    Optional<String> name = Words.name(Optional.of(value));
    Optional<Chain> chain = name.flatMap(drive::chain);
    if (name.isPresent() && chain.isEmpty()) {
      List<String> known = drive.chains().stream().map(Chain::name).toList();
      value.complain(Fault.MEASURED_CHAIN_UNKNOWN, Map.of("chain", name.get(), "known", known));
    }
    return chain;
  }

  private List<SurveyPoint> points(Optional<Value> value) {
    List<SurveyPoint> points = new ArrayList<>();
    for (Value one : Lists.pair(value, "[crank, intake]")) {
      point(one).ifPresent(points::add);
    }
    if (points.size() == 2 && points.get(0).equals(points.get(1))) {
      value.get().complain(Fault.POINTS_THE_SAME);
    }
    return points;
  }

  private Optional<SurveyPoint> point(Value value) {
    Optional<String> text = Words.text(Optional.of(value));
    Optional<SurveyPoint> point = text.flatMap(SurveyPoint::parse).filter(p -> p.in(drive));
    if (text.isPresent() && point.isEmpty()) {
      String known = drive.shafts().stream().map(Shaft::name).collect(Collectors.joining(", "));
      value.complain(
          Fault.POINT_UNKNOWN, Map.of("point", new Value.Quoted(text.get()), "known", known));
    }
    return point;
  }

  private static Optional<Reading> mm(SectionReader s, Tool usual) {
    return reading(s, Numbers.number(s.need("mm"), Limits.POSITION_MM), usual);
  }

  private static Optional<Reading> reading(SectionReader s, Optional<Double> read, Tool usual) {
    Tool tool = Words.choice(s.may("by"), Tool.values()).orElse(usual);
    Optional<Double> sigma = Numbers.number(s.may("sigma"), Reading.SIGMA);
    return read.map(value -> new Reading(value, tool, Numbers.primitive(sigma)));
  }
}
