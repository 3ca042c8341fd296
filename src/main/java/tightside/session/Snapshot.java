package tightside.session;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Limits;
import tightside.drive.Plan;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.engine.Engine;
import tightside.engine.Phaser;
import tightside.lesson.LessonRun;
import tightside.survey.Adjustment;
import tightside.survey.Survey;
import tightside.timing.Seat;
import tightside.timing.State;

/**
 * A whole session at one moment.
 *
 * @param source where the drive came from, as a person would call it
 * @param reseats teeth by which a sprocket was put back further ahead (+) or behind (-)
 * @param stretchPercent by chain; a chain not named is new
 * @param heldMm by chain: the extension at which its plunger is held
 * @param counts what was counted, as typed
 * @param cover how much can be seen
 * @param slack what is said of the job while the chain is slack
 * @param job what is noted for the job, and how far it is
 * @param kept the state that this one is compared with, its crank at the reference position
 * @param unfinished the layout as it is drawn, as long as it makes no drive
 * @param lesson that is under way; as long as it hides what is wrong, all else here is the drive as
 *     it belongs
 * @param typed the form for a drive of one's own, once anything of it is typed
 * @param measured what the drive was adjusted to, if it was measured
 * @param why what was typed on the card Why
 * @param unadjusted what was measured before the drive was drawn otherwise: it is yet to be
 *     adjusted to it
 */
public record Snapshot(
    Drive drive,
    String source,
    Crank crank,
    Map<Seat, Integer> reseats,
    Map<String, Double> stretchPercent,
    Map<String, Double> heldMm,
    Map<StrandId, Count> counts,
    Seen cover,
    Look look,
    SlackSetup slack,
    JobState job,
    Optional<State> kept,
    Optional<Plan> unfinished,
    Optional<LessonRun> lesson,
    Optional<OwnForm> typed,
    Optional<Adjustment> measured,
    WhyNotes why,
    Optional<Survey> unadjusted) {

  public Snapshot {
    reseats = Map.copyOf(reseats);
    stretchPercent = Map.copyOf(stretchPercent);
    heldMm = Map.copyOf(heldMm);
    counts = Map.copyOf(counts);
    if (cover == Seen.NEVER) {
      throw new IllegalArgumentException("a cover is on, off, or looked behind");
    }
    reseats.keySet().forEach(seat -> sprocketOf(drive, seat));
    stretchPercent.keySet().forEach(c -> chainOf(drive, c));
    stretchPercent.forEach((c, percent) -> refuseOutside(Limits.STRETCH_PERCENT, percent, c));
    heldMm.forEach((c, mm) -> refuseOutside(travel(chainOf(drive, c)), mm, c));
    counts.keySet().forEach(id -> chainOf(drive, id.chain()));
  }

  /** A drive as it is opened: new, right, at the reference position, its cover off. */
  public static Snapshot opened(Drive drive, String source) {
    return opened(drive, source, SlackSetup.usual());
  }

  /** The same, with what its model says of the job and the engine. */
  public static Snapshot opened(Drive drive, String source, SlackSetup slack) {
    return new Snapshot(
        drive,
        source,
        Crank.REFERENCE,
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Seen.COVER_OFF,
        Look.usual(),
        slack,
        JobState.unsaid(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        WhyNotes.none(),
        Optional.empty());
  }

  /** How far the plunger of a chain can be held out; not at all without a tensioner. */
  static Limits travel(Chain chain) {
    double travel = chain.tensioner().map(t -> t.plunger().travelMm()).orElse(-1.0);
    return new Limits(0, travel, "mm");
  }

  private static Chain chainOf(Drive drive, String chain) {
    return drive
        .chain(chain)
        .orElseThrow(() -> new IllegalArgumentException("the drive has no chain " + chain));
  }

  private static void sprocketOf(Drive drive, Seat seat) {
    if (chainOf(drive, seat.chain()).sprocketOn(seat.shaft()).isEmpty()) {
      throw new IllegalArgumentException("the drive has no sprocket " + seat);
    }
  }

  private static void refuseOutside(Limits limits, double value, String chain) {
    if (!limits.allow(value)) {
      throw new IllegalArgumentException(chain + " can't have " + value + " " + limits.unit());
    }
  }

  /** A measured drive, as adjusted, with what it was adjusted to. */
  public Snapshot measured(Adjustment adjustment) {
    Snapshot redrawn = drive.equals(adjustment.best()) ? this : redrawn(adjustment.best());
    return redrawn.next(
        n -> {
          n.measured = Optional.of(adjustment);
          n.unadjusted = Optional.empty();
        });
  }

  /** What was measured on the drive, whether it is adjusted to it or yet to be. */
  public Optional<Survey> survey() {
    return measured.map(Adjustment::survey).or(() -> unadjusted);
  }

  /** What the solver has to know. */
  public State state() {
    return new State(crank.degrees(), crank.arrived(), reseats, stretchPercent, heldMm);
  }

  Chain chain(String name) {
    return chainOf(drive, name);
  }

  /** The same but for what is changed. */
  private Snapshot next(Consumer<NextSnapshot> change) {
    NextSnapshot next = new NextSnapshot(this);
    change.accept(next);
    return next.made();
  }

  Snapshot with(Crank other) {
    return next(n -> n.crank = other);
  }

  /** With the reseats, stretches and held plungers of a state. */
  Snapshot with(State other) {
    return next(
        n -> {
          n.reseats = other.reseats();
          n.stretchPercent = other.stretchPercent();
          n.heldMm = other.heldMm();
        });
  }

  Snapshot withCounts(Map<StrandId, Count> other) {
    return next(n -> n.counts = other);
  }

  /** The same with another cover. */
  public Snapshot with(Seen other) {
    return next(n -> n.cover = other);
  }

  /** The same, looked at otherwise. */
  public Snapshot with(Look other) {
    return next(n -> n.look = other);
  }

  Snapshot with(SlackSetup other) {
    return next(n -> n.slack = other);
  }

  /** The same with another job, or further on with it. */
  public Snapshot with(JobState other) {
    return next(n -> n.job = other);
  }

  Snapshot with(WhyNotes other) {
    return next(n -> n.why = other);
  }

  Snapshot keeping(Optional<State> other) {
    return next(n -> n.kept = other);
  }

  Snapshot with(LessonRun run) {
    return next(n -> n.lesson = Optional.of(run));
  }

  /** Whether a lesson hides what is wrong: then nothing may move, and nothing is told. */
  public boolean sealed() {
    return lesson.filter(run -> run.stage().hides()).isPresent();
  }

  /** The layout as it is drawn. */
  public Plan plan() {
    return unfinished.orElseGet(() -> Plan.of(drive));
  }

  /** With a layout that makes no drive yet. */
  Snapshot withUnfinished(Optional<Plan> plan) {
    return next(n -> n.unfinished = plan);
  }

  /** The form for a drive of one's own: as typed, or as the drive has it, or with nothing typed. */
  public OwnForm own() {
    return typed.or(() -> OwnForm.of(drive)).orElseGet(OwnForm::begun);
  }

  Snapshot withOwn(OwnForm form) {
    return next(n -> n.typed = Optional.of(form));
  }

  /** With the drive drawn otherwise; of what was done to it, what still has a meaning stays. */
  Snapshot redrawn(Drive other) {
    return next(
        n -> {
          n.drive = other;
          n.unfinished = Optional.empty();
          n.reseats = left(reseats, seat -> sprocketStays(other, seat));
          n.stretchPercent = left(stretchPercent, chain -> other.chain(chain).isPresent());
          n.heldMm = left(heldMm, chain -> travelStays(other, chain));
          n.counts = left(counts, strand -> strandStays(other, strand));
          n.look = look.selecting(look.selected().filter(s -> selectionStays(other, s)));
          n.kept = Optional.empty();
          n.measured = Optional.empty();
          n.unadjusted = survey().map(s -> s.leftOn(other)).filter(s -> !s.isEmpty());
        });
  }

  private static <K, V> Map<K, V> left(Map<K, V> map, Predicate<K> stays) {
    Map<K, V> left = new HashMap<>(map);
    left.keySet().removeIf(stays.negate());
    return left;
  }

  private static boolean sprocketStays(Drive other, Seat seat) {
    return other.chain(seat.chain()).flatMap(c -> c.sprocketOn(seat.shaft())).isPresent();
  }

  private boolean travelStays(Drive other, String chain) {
    return other.chain(chain).filter(c -> travel(c).allow(heldMm.get(chain))).isPresent();
  }

  private static boolean strandStays(Drive other, StrandId strand) {
    return sprocketStays(other, new Seat(strand.chain(), strand.from()))
        && sprocketStays(other, new Seat(strand.chain(), strand.to()));
  }

  private static boolean selectionStays(Drive other, Look.Selection selection) {
    return selection
        .shaft()
        .map(shaft -> sprocketStays(other, new Seat(selection.chain(), shaft)))
        .orElseGet(() -> other.chain(selection.chain()).isPresent());
  }

  /**
   * What the model says of cylinders and valves; nothing as long as one of its camshafts is none of
   * this drive's.
   */
  public Optional<Engine> engine() {
    return slack
        .engine()
        .filter(e -> e.valves().stream().allMatch(valve -> isCamshaft(valve.shaft())));
  }

  private boolean isCamshaft(String shaft) {
    return drive.shaft(shaft).filter(s -> s.role() == Role.CAMSHAFT).isPresent();
  }

  /** By camshaft, as the model has them. */
  public Map<String, Phaser> phasers() {
    return left(slack.phasers(), this::isCamshaft);
  }
}
