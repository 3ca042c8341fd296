package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import tightside.drive.HotFit;
import tightside.drive.Joint;
import tightside.drive.Role;
import tightside.drive.Sprocket;
import tightside.engine.AtReference;
import tightside.engine.Phaser;
import tightside.readings.JointMistake;
import tightside.readings.LayRow;
import tightside.readings.LayTable;
import tightside.session.SlackPage.Section;
import tightside.timing.Climb;
import tightside.timing.CountJudge;
import tightside.timing.DowelRule;
import tightside.timing.FreeTeeth;
import tightside.timing.HoldBack;
import tightside.timing.Kick;
import tightside.timing.PressBack;
import tightside.timing.SlideOff;
import tightside.words.HoldBackWords;
import tightside.words.LayWords;
import tightside.words.SlackWords;
import tightside.words.TakingOffWords;

/** The sections of one chain's page. */
record SlackSections(Snapshot now, LayTable table) {

  /** Rows that are worth a page; the rest are less dangerous still. */
  private static final int ROWS = 8;

  /** Of the crankshaft for one turn of a camshaft. */
  private static final double CRANK_TURNS_OF_A_CAMSHAFT = 2;

  private HoldBack hold() {
    return table.hold();
  }

  List<Section> all() {
    List<Section> all = new ArrayList<>();
    all.add(new Section("Slack", slack()));
    all.add(new Section("Taking a sprocket off", takingOff()));
    all.add(new Section("Putting it back to its dowel", rules(), true));
    all.add(new Section("Pressing the tensioner back", pressBack()));
    all.add(new Section("By thumb, tight runs", sag()));
    all.add(new Section("What could go wrong, most dangerous first", rows()));
    all.add(new Section("Joints, every link right", joints()));
    all.add(new Section("Let go", kicks()));
    all.add(new Section("Hot and cold", hot()));
    return all.stream().filter(s -> !s.sentences().isEmpty()).toList();
  }

  private List<String> slack() {
    return Stream.concat(
            Stream.of(HoldBackWords.slack(hold())),
            hold().strands().stream().map(HoldBackWords::strand))
        .toList();
  }

  /** Driven sprockets with a mark. */
  private List<Sprocket> driven() {
    return hold().chain().sprockets().stream().skip(1).filter(s -> s.marked()).toList();
  }

  private List<String> camshafts() {
    return driven().stream()
        .map(Sprocket::shaft)
        .filter(s -> now.drive().shaft(s).orElseThrow().role() == Role.CAMSHAFT)
        .toList();
  }

  private String driver() {
    return hold().chain().driver().shaft();
  }

  private List<String> takingOff() {
    List<String> sentences = new ArrayList<>();
    for (Sprocket sprocket : driven()) {
      String shaft = sprocket.shaft();
      SlideOff slide = SlideOff.of(hold(), Set.of(shaft), now.slack().engagementMm());
      Optional<FreeTeeth> free = FreeTeeth.of(hold(), shaft, slide, Optional.empty());
      sentences.add(
          TakingOffWords.slideOff(slide) + " " + TakingOffWords.freeTeeth(driver(), free));
    }
    if (camshafts().size() > 1) {
      Set<String> together = Set.copyOf(camshafts());
      sentences.add(
          "Together: "
              + TakingOffWords.slideOff(SlideOff.of(hold(), together, now.slack().engagementMm())));
    }
    Climb.of(hold(), driver()).map(TakingOffWords::climb).ifPresent(sentences::add);
    return sentences;
  }

  private List<String> pressBack() {
    return camshafts().stream()
        .flatMap(
            shaft ->
                PressBack.of(
                    now.drive(), hold().chain(), shaft, hold().extensionMm(), clearance(shaft))
                    .stream())
        .map(TakingOffWords::pressBack)
        .toList();
  }

  /** The room between that camshaft's valves and the pistons, where the model tells. */
  private Optional<DoubleUnaryOperator> clearance(String shaft) {
    return now.slack()
        .engine()
        .flatMap(engine -> AtReference.clearance(engine, shaft, CRANK_TURNS_OF_A_CAMSHAFT));
  }

  private List<String> sag() {
    List<String> reached =
        hold().strands().stream()
            .filter(s -> s.strand().taut() && CountJudge.countable(s.strand(), now.cover()))
            .map(s -> SlackWords.sag(s, hold().pitchMm()))
            .toList();
    return reached.isEmpty()
        ? List.of(
            "No tight run of this chain can be reached %s.".formatted(Words.with(now.cover())))
        : reached;
  }

  private List<String> rows() {
    List<String> sentences = new ArrayList<>();
    for (LayRow row : table.rows().subList(0, Math.min(ROWS, table.rows().size()))) {
      sentences.add(LayWords.row(hold(), row));
    }
    sentences.add(LayWords.never(table));
    return sentences;
  }

  private List<String> joints() {
    Map<String, Phaser> known = now.phasers();
    List<JointMistake.Phased> phasers =
        camshafts().stream()
            .filter(s -> known.isEmpty() || known.containsKey(s))
            .map(s -> new JointMistake.Phased(s, range(Optional.ofNullable(known.get(s)))))
            .toList();
    return JointMistake.on(hold(), phasers).stream().map(SlackWords::joint).toList();
  }

  private static OptionalDouble range(Optional<Phaser> phaser) {
    return phaser.stream()
        .mapToDouble(p -> CRANK_TURNS_OF_A_CAMSHAFT * p.travelDegrees())
        .findFirst();
  }

  private List<String> kicks() {
    return Stream.concat(
            camshafts().stream().map(s -> TakingOffWords.kick(s, kick(s))),
            Stream.of(SlackWords.caution()))
        .toList();
  }

  private Kick kick(String shaft) {
    return now.slack()
        .engine()
        .map(engine -> AtReference.kick(engine, shaft, CRANK_TURNS_OF_A_CAMSHAFT))
        .orElse(new Kick.Unknown());
  }

  private List<String> hot() {
    HotFit fit = HotFit.of(hold().inPlace(), hold().pitchMm(), now.slack().heat());
    return List.of(SlackWords.hot(fit, now.slack().heat()));
  }

  private List<String> rules() {
    return driven().stream()
        .filter(s -> s.joint() != Joint.FRICTION)
        .map(s -> HoldBackWords.rule(DowelRule.of(hold(), s.shaft())))
        .toList();
  }
}
