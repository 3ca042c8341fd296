package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import tightside.drive.Chain;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.drive.Tensioner;
import tightside.readings.TwoTurnsAgain;
import tightside.timing.ChainSolution;
import tightside.timing.Strand;

/** Every check that could be made on a drive and was not yet. */
final class Candidates {

  /** A sensor's reading, crank degrees; standard deviation, from memory. */
  private static final double SENSED_DEGREES = 1;

  /** Valve angles seen in a cylinder's pressure, crank degrees; from memory. */
  private static final double VALVE_DEGREES = 2;

  /** Stretch by a calliper over ten pitches of a chain in place, percent; from memory. */
  private static final double CALLIPER_PERCENT = 0.1;

  /** What a gauge and a battery leave in doubt, percent; see the compression test. */
  private static final double COMPRESSION_PERCENT = 10;

  private static final int MOST_LINKS_OFF = 4;

  private final DriveFaults faults;
  private final Evidence evidence;
  private final Likelihood likelihood;
  private final List<Candidate> all = new ArrayList<>();

  private Candidates(DriveFaults faults, Evidence evidence) {
    this.faults = faults;
    this.evidence = evidence;
    likelihood = Likelihood.of(faults, evidence);
  }

  static List<Candidate> of(DriveFaults faults, Evidence evidence) {
    Candidates candidates = new Candidates(faults, evidence);
    candidates.cheap(Cheap.OIL, CheckKind.OIL);
    candidates.cheap(Cheap.WIRING, CheckKind.WIRING);
    faults.right().chains().forEach(candidates::chain);
    faults.subject().drive().shafts().stream()
        .filter(s -> s.role() == Role.CAMSHAFT && faults.quantities().times(s.name()))
        .forEach(s -> candidates.camshaft(s.name()));
    candidates.compression();
    return candidates.all;
  }

  private boolean done(Predicate<Reading> such) {
    return evidence.readings().stream().anyMatch(such);
  }

  private void cheap(Cheap cheap, CheckKind kind) {
    if (!done(r -> r instanceof Reading.Looked l && l.at() == cheap)) {
      add(
          kind,
          Optional.empty(),
          Optional.empty(),
          Seen.COVER_ON,
          NextCheck.Outcome.FAULT_FOUND,
          (q, h) -> Candidate.Shown.yes(cheap.foundUnder(h.what())));
    }
  }

  private void add(
      CheckKind kind,
      Optional<String> chain,
      Optional<String> shaft,
      Seen access,
      NextCheck.Outcome outcome,
      Candidate.Shows shows) {
    all.add(new Candidate(kind, chain, shaft, Optional.empty(), access, outcome, shows));
  }

  private void chain(ChainSolution solution) {
    Chain chain = solution.chain();
    chain.tensioner().ifPresent(t -> plunger(chain, t));
    for (Strand strand : solution.strands()) {
      count(chain.name(), strand);
    }
    for (Sprocket sprocket : chain.sprockets().subList(1, chain.sprockets().size())) {
      if (sprocket.marked()) {
        mark(sprocket);
      }
    }
    calliper(chain.name());
  }

  private void plunger(Chain chain, Tensioner tensioner) {
    if (done(r -> r instanceof Reading.PlungerStands p && p.chain().equals(chain.name()))
        || faults.subject().drive().chain(chain.name()).isEmpty()) {
      return;
    }
    PlungerFactor factor =
        Compiled.plunger(faults, evidence.spreads(), new Reading.PlungerStands(chain.name(), 0, 0));
    double travel = tensioner.plunger().travelMm();
    double spread = factor.spreadMm();
    add(
        CheckKind.PLUNGER,
        Optional.of(chain.name()),
        Optional.empty(),
        tensioner.seen(),
        NextCheck.Outcome.MM,
        (q, h) ->
            h.open().frees(factor.place())
                ? Candidate.Shown.normal(travel / 2, travel / Math.sqrt(12))
                : Candidate.Shown.normal(q[factor.place()], spread));
  }

  private void count(String chain, Strand strand) {
    if (done(
        r ->
            r instanceof Reading.Counted c
                && c.chain().equals(chain)
                && c.from().equals(strand.from())
                && c.to().equals(strand.to()))) {
      return;
    }
    int place = faults.quantities().links(chain, strand.from(), strand.to());
    all.add(
        new Candidate(
            CheckKind.COUNT,
            Optional.of(chain),
            Optional.of(strand.from()),
            Optional.of(strand.to()),
            strand.seen(),
            NextCheck.Outcome.LINKS,
            (q, h) -> counted(q, h, place, strand.links())));
  }

  /** The chances of counts from four links too few to four too many. */
  private static Candidate.Shown counted(double[] q, Hypothesis h, int place, long right) {
    double[] chances = new double[2 * MOST_LINKS_OFF + 1];
    double sum = 0;
    for (int off = -MOST_LINKS_OFF; off <= MOST_LINKS_OFF; off++) {
      CountFactor factor = new CountFactor(place, right + off);
      chances[off + MOST_LINKS_OFF] = Math.exp(factor.log(q, h.open()));
      sum += chances[off + MOST_LINKS_OFF];
    }
    for (int i = 0; i < chances.length; i++) {
      chances[i] /= sum;
    }
    return new Candidate.Shown(right - MOST_LINKS_OFF, 0, chances);
  }

  private void mark(Sprocket sprocket) {
    String shaft = sprocket.shaft();
    if (done(r -> r instanceof Reading.MarkStands m && m.shaft().equals(shaft))) {
      return;
    }
    int place = faults.quantities().turned(shaft);
    double perShaft = 1 / faults.subject().drive().gearing().perCrankTurn(shaft).doubleValue();
    add(
        CheckKind.TURN_BY_HAND,
        Optional.empty(),
        Optional.of(shaft),
        sprocket.seen(),
        NextCheck.Outcome.CRANK_DEGREES,
        (q, h) ->
            Candidate.Shown.normal(
                q[place], Math.hypot(TwoTurnsAgain.READ_DEGREES * perShaft, open(h))));
  }

  private static double open(Hypothesis hypothesis) {
    return hypothesis.what().cause() == Cause.OTHER ? Amounts.OTHER_DEGREES : 0;
  }

  private void calliper(String chain) {
    if (done(r -> r instanceof Reading.Calliper c && c.chain().equals(chain))) {
      return;
    }
    int place = faults.quantities().stretch(chain);
    add(
        CheckKind.CALLIPER,
        Optional.of(chain),
        Optional.empty(),
        Seen.COVER_OFF,
        NextCheck.Outcome.PERCENT,
        (q, h) ->
            Candidate.Shown.normal(
                q[place], h.what().cause() == Cause.OTHER ? 1 : CALLIPER_PERCENT));
  }

  private void camshaft(String shaft) {
    Quantities quantities = faults.quantities();
    int turned = quantities.turned(shaft);
    Optional<String> of = Optional.of(shaft);
    if (!done(r -> r instanceof Reading.LockingTool t && t.shaft().equals(shaft))) {
      ToolFactor tool =
          (ToolFactor)
              Compiled.factor(
                  faults,
                  evidence.spreads(),
                  new Reading.LockingTool(shaft, true, OptionalDouble.empty()));
      add(
          CheckKind.LOCKING_TOOL,
          Optional.empty(),
          of,
          Seen.COVER_ON,
          NextCheck.Outcome.GOES_IN,
          (q, h) -> Candidate.Shown.yes(Math.exp(tool.log(q, h.open()))));
    }
    if (!done(r -> r instanceof Reading.ValveAngle v && v.shaft().equals(shaft))) {
      add(
          CheckKind.VALVE_ANGLE,
          Optional.empty(),
          of,
          Seen.COVER_ON,
          NextCheck.Outcome.CRANK_DEGREES,
          (q, h) ->
              Candidate.Shown.normal(
                  q[turned] + q[quantities.driven(shaft)], Math.hypot(VALVE_DEGREES, open(h))));
    }
    sensed(shaft);
    int wheel = quantities.wheel(shaft);
    add(
        CheckKind.EDGES,
        Optional.empty(),
        of,
        Seen.COVER_ON,
        NextCheck.Outcome.UNEVEN,
        (q, h) ->
            Candidate.Shown.yes(h.bent().isPresent() && h.bent().getAsInt() == wheel ? 0.9 : 0.05));
  }

  /** Readings of the same sensor in another way: what it read before is borne in mind. */
  private void sensed(String shaft) {
    boolean driven =
        faults.effects().stream()
            .anyMatch(
                e ->
                    e.what().cause() == Cause.PHASER
                        && e.what().shaft().equals(Optional.of(shaft)));
    if (driven
        && !done(
            r ->
                r instanceof Reading.CamAngle c
                    && c.shaft().equals(shaft)
                    && !c.condition().phaserFree())) {
      again(shaft, CheckKind.UNPLUG, Condition.PHASER_UNPLUGGED);
    }
    if (done(r -> r instanceof Reading.CamAngle c && c.shaft().equals(shaft) && c.learned())
        && !done(r -> r instanceof Reading.CamAngle c && c.shaft().equals(shaft) && !c.learned())) {
      again(shaft, CheckKind.RESET, Condition.HOT_IDLE);
    }
  }

  private void again(String shaft, CheckKind kind, Condition condition) {
    double times = evidence.spreads().factor();
    Row row =
        Compiled.sensed(
            faults.quantities(), shaft, 0, times * SENSED_DEGREES, condition, false, false, times);
    add(
        kind,
        Optional.empty(),
        Optional.of(shaft),
        Seen.COVER_ON,
        NextCheck.Outcome.CRANK_DEGREES,
        (q, h) -> likelihood.next(row, q, h));
  }

  private void compression() {
    if (faults.subject().engine().isEmpty() || done(r -> r instanceof Reading.Compression)) {
      return;
    }
    CompressionFactor factor =
        (CompressionFactor)
            Compiled.factor(
                faults, evidence.spreads(), new Reading.Compression(100, COMPRESSION_PERCENT));
    add(
        CheckKind.COMPRESSION,
        Optional.empty(),
        Optional.empty(),
        Seen.COVER_ON,
        NextCheck.Outcome.PERCENT,
        (q, h) ->
            Candidate.Shown.normal(
                factor.percentAt(q), h.what().cause() == Cause.OTHER ? 30 : COMPRESSION_PERCENT));
  }
}
