package tightside.session;

import java.util.Map;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Limits;
import tightside.drive.Seen;
import tightside.engine.Engine;
import tightside.engine.Phaser;
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
 * @param kept the state that this one is compared with, its crank at the reference position
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
    Optional<State> kept) {

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

  /** What the solver has to know. */
  public State state() {
    return new State(crank.degrees(), crank.arrived(), reseats, stretchPercent, heldMm);
  }

  Chain chain(String name) {
    return chainOf(drive, name);
  }

  Snapshot with(Crank other) {
    return new Snapshot(
        drive, source, other, reseats, stretchPercent, heldMm, counts, cover, look, slack, kept);
  }

  /** With the reseats, stretches and held plungers of a state. */
  Snapshot with(State other) {
    return new Snapshot(
        drive,
        source,
        crank,
        other.reseats(),
        other.stretchPercent(),
        other.heldMm(),
        counts,
        cover,
        look,
        slack,
        kept);
  }

  Snapshot withCounts(Map<StrandId, Count> other) {
    return new Snapshot(
        drive, source, crank, reseats, stretchPercent, heldMm, other, cover, look, slack, kept);
  }

  Snapshot with(Seen other) {
    return new Snapshot(
        drive, source, crank, reseats, stretchPercent, heldMm, counts, other, look, slack, kept);
  }

  /** The same, looked at otherwise. */
  public Snapshot with(Look other) {
    return new Snapshot(
        drive, source, crank, reseats, stretchPercent, heldMm, counts, cover, other, slack, kept);
  }

  Snapshot with(SlackSetup other) {
    return new Snapshot(
        drive, source, crank, reseats, stretchPercent, heldMm, counts, cover, look, other, kept);
  }

  Snapshot keeping(Optional<State> other) {
    return new Snapshot(
        drive, source, crank, reseats, stretchPercent, heldMm, counts, cover, look, slack, other);
  }

  /** What the model says of cylinders and valves. */
  public Optional<Engine> engine() {
    return slack.engine();
  }

  /** By camshaft, as the model has them. */
  public Map<String, Phaser> phasers() {
    return slack.phasers();
  }
}
