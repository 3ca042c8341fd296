package tightside.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import tightside.session.Sentence.Topic;
import tightside.timing.ChainSolution;
import tightside.timing.CountVerdict;
import tightside.timing.Lag;
import tightside.timing.ShaftTiming;
import tightside.timing.Solution;
import tightside.timing.Strand;
import tightside.timing.Unknown;
import tightside.words.UnknownWords;

/**
 * All that a person sees of a snapshot, derived from it alone. What the view before it has found
 * out of the same drive is not found out again.
 */
public final class SessionView {

  /** Crank degrees; far below what can be seen, far above what adding up teeth loses. */
  private static final double SAME_ANGLE = 1e-6;

  private static final double CYCLE_DEGREES = 720;

  /** What a ruler would tell. */
  private static final Set<Unknown.Kind> MEASURABLE =
      EnumSet.of(Unknown.Kind.PITCH_MISSING, Unknown.Kind.RUN_MISSING);

  private final Snapshot snapshot;
  private final DriveFacts facts;
  private final Solution solution;
  private final Map<String, CountReading> counts;
  private final Optional<Valves> valves;

  /** The view of what was kept, or the last one of it; none until it is asked for. */
  private Optional<SessionView> kept;

  private SessionView(
      Snapshot snapshot,
      DriveFacts facts,
      Map<String, CountReading> counts,
      Optional<Valves> before,
      Optional<SessionView> kept) {
    this.snapshot = snapshot;
    this.facts = facts;
    this.counts = counts;
    this.kept = kept;
    solution = facts.solver().solve(snapshot.state());
    valves = before.filter(v -> v.holdFor(snapshot)).or(() -> Valves.of(snapshot, solution));
  }

  public static SessionView of(Snapshot snapshot) {
    DriveFacts facts = DriveFacts.of(snapshot.drive());
    return new SessionView(
        snapshot, facts, read(snapshot, facts), Optional.empty(), Optional.empty());
  }

  private static Map<String, CountReading> read(Snapshot snapshot, DriveFacts facts) {
    Map<String, CountReading> counts = new LinkedHashMap<>();
    facts
        .judges()
        .forEach(
            (chain, judge) ->
                counts.put(chain, CountReading.of(snapshot, snapshot.chain(chain), judge)));
    return counts;
  }

  /** The view of another snapshot; this one if it is the same. */
  public SessionView next(Snapshot other) {
    if (other == snapshot) {
      return this;
    }
    if (other.drive() != snapshot.drive()) {
      return of(other);
    }
    boolean countedTheSame =
        other.cover() == snapshot.cover() && other.counts().equals(snapshot.counts());
    return new SessionView(
        other, facts, countedTheSame ? counts : read(other, facts), valves, kept);
  }

  public Snapshot snapshot() {
    return snapshot;
  }

  public Solution solution() {
    return solution;
  }

  /** The valves over their pistons; nothing where the model says nothing of its engine. */
  public Optional<Valves> valves() {
    return valves;
  }

  /** What was kept to be compared with, its crank where this one stands. */
  public Optional<SessionView> kept() {
    kept = Comparing.kept(snapshot).map(a -> kept.orElse(this).next(a));
    return kept;
  }

  /**
   * A step as far as the valves let the engine turn. Where one meets its piston a turn ends, unless
   * it is asked to be drawn on all the same; it can be turned out of there, but no further in.
   *
   * @param now where the step is taken from
   */
  public Edit stopped(Snapshot now, Edit step) {
    boolean free = now.engine().isEmpty() || now.look().valves().past() || !Turns.turns(step);
    return free ? step : next(now).stopped(step);
  }

  private Edit stopped(Edit turn) {
    double from = snapshot.crank().degrees();
    double to = turn.after().crank().degrees();
    double reached = valves.map(v -> v.reach(from, to)).orElse(to);
    return reached == to ? turn : Turns.to(snapshot, reached);
  }

  /** What the counts of a chain say. */
  public CountVerdict verdict(String chain) {
    return counts.get(chain).verdict();
  }

  /** Whether nothing that was counted of a chain speaks against it, as far as it can be read. */
  public boolean countsFit(String chain) {
    CountVerdict verdict = verdict(chain);
    return verdict instanceof CountVerdict.Fits || verdict instanceof CountVerdict.NothingCounted;
  }

  /** The strands of a chain, in the direction of travel; empty where it does not fit. */
  public List<StrandRow> strandRows(String chain) {
    return snapshot.sealed()
        ? List.of()
        : Tables.strands(snapshot, solution.chain(chain).orElseThrow());
  }

  /** Every timed shaft, in the order of the model; without its angles where none holds. */
  public List<ShaftRow> shaftRows() {
    List<ShaftRow> rows = Tables.shafts(solution);
    return sure() ? rows : rows.stream().map(row -> row.unknown(notKnown())).toList();
  }

  private String notKnown() {
    if (snapshot.sealed()) {
      return "not told before a prediction";
    }
    return snapshot.crank().toTakeUpDegrees() > 0
        ? "not known until turned forward"
        : "not known until the plunger is let go";
  }

  /** The strands of a chain with the links that belong there; empty where it does not fit. */
  public List<Strand> rightStrands(String chain) {
    return facts.judges().get(chain).strands();
  }

  /** What is to be said of the counts of a chain: first the verdict, then what stays unproved. */
  public List<Sentence> countSentences(String chain) {
    return snapshot.sealed() ? List.of() : counts.get(chain).sentences();
  }

  /** The stretch at which the tensioner of a chain runs out, percent; none where it does not. */
  public OptionalDouble runsOutPercent(String chain) {
    return snapshot.sealed() ? OptionalDouble.empty() : facts.stretchLimits().get(chain);
  }

  /** How a chain lies and how its tensioner stands. */
  public List<Sentence> stands(String chain) {
    if (snapshot.sealed()) {
      return List.of();
    }
    ChainWords words = words(chain);
    return Stream.concat(words.fit().stream(), words.tensioner().stream()).toList();
  }

  private ChainWords words(String chain) {
    return new ChainWords(
        solution.chain(chain).orElseThrow(),
        snapshot.heldMm().containsKey(chain),
        facts.stretchLimits().get(chain));
  }

  /** All that is to be said, in the order of the topics. */
  public List<Sentence> sentences() {
    if (snapshot.sealed()) {
      return List.of(LessonEdits.sealed(snapshot));
    }
    List<Sentence> sentences = new ArrayList<>(shafts());
    touching().ifPresent(sentences::add);
    if (snapshot.crank().toTakeUpDegrees() > 0) {
      sentences.add(turnedBack());
    }
    for (ChainSolution chain : solution.chains()) {
      String name = chain.chain().name();
      sentences.addAll(stands(name));
      sentences.addAll(counts.get(name).sentences());
    }
    if (wholeCycles() != 0) {
      List<ChainWords> chains =
          solution.chains().stream().map(chain -> words(chain.chain().name())).toList();
      sentences.add(ChainWords.paint(chains, 2 * wholeCycles()));
    }
    sentences.sort(Comparator.comparing(Sentence::topic));
    return sentences;
  }

  private List<Sentence> shafts() {
    return Stream.concat(timed().stream(), untimed().stream()).toList();
  }

  /** Which measurements the shafts ask for that can't be timed, worn as their chains are. */
  private List<Sentence> untimed() {
    return solution.untimed().isEmpty()
        ? List.of()
        : solution.unknowns().stream()
            .filter(unknown -> MEASURABLE.contains(unknown.kind()))
            .map(unknown -> new Sentence(Topic.SHAFT, UnknownWords.of(unknown)))
            .toList();
  }

  private List<Sentence> timed() {
    if (solution.shafts().size() < 2 && !solution.untimed().isEmpty()) {
      return List.of();
    }
    if (solution.shafts().size() < 2) {
      return List.of(new Sentence(Topic.SHAFT, "Nothing is known of the timing of any shaft."));
    }
    List<ShaftTiming> off = solution.shafts().stream().filter(s -> s.lag() != Lag.RIGHT).toList();
    if (off.isEmpty()) {
      return sure()
          ? List.of(new Sentence(Topic.SHAFT, "Every timed shaft stands where it belongs."))
          : List.of();
    }
    return off.stream()
        .map(s -> new Sentence(Topic.SHAFT, Words.shaftSentence(snapshot.drive(), s)))
        .toList();
  }

  private boolean sure() {
    return !snapshot.sealed()
        && snapshot.heldMm().isEmpty()
        && snapshot.crank().toTakeUpDegrees() == 0;
  }

  /** The valve that has least room, if any has none. */
  public Optional<Valves.Touch> touch() {
    return valves.flatMap(v -> v.touch(snapshot.crank().degrees()));
  }

  private Optional<Sentence> touching() {
    return touch().map(touch -> new Sentence(Topic.CAUTION, TouchWords.of(snapshot, touch)));
  }

  private Sentence turnedBack() {
    return new Sentence(Topic.CAUTION, Words.turnedBack(snapshot.crank().toTakeUpDegrees()));
  }

  /** Cycles of two crank turns since the reference position; 0 where it does not stand at one. */
  private long wholeCycles() {
    double cycles = snapshot.crank().degrees() / CYCLE_DEGREES;
    long nearest = Math.round(cycles);
    return Math.abs(cycles - nearest) * CYCLE_DEGREES < SAME_ANGLE ? nearest : 0;
  }
}
