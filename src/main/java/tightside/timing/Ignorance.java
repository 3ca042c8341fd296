package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Joint;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.timing.Unknown.Kind;

/** What a solution does not know. */
final class Ignorance {

  private Ignorance() {}

  static List<Unknown> of(
      Drive drive, State state, List<ChainSolution> chains, Map<String, Double> errors) {
    List<Unknown> unknowns = new ArrayList<>();
    for (ChainSolution solution : chains) {
      Chain chain = solution.chain();
      for (Strand strand : solution.strands()) {
        if (strand.seen() == Seen.NEVER) {
          unknowns.add(
              new Unknown(
                  Kind.STRAND_NEVER_SEEN, chain.name(), List.of(strand.from(), strand.to())));
        }
      }
      for (Sprocket sprocket : chain.sprockets()) {
        unknowns.addAll(of(chain, sprocket));
      }
      if (state.heldMm().containsKey(chain.name())) {
        unknowns.add(new Unknown(Kind.PLUNGER_HELD, chain.name(), List.of()));
      }
      if (state.arrived() == State.Arrived.BACKWARD) {
        unknowns.add(new Unknown(Kind.TURNED_BACK, chain.name(), List.of()));
      }
      if (chain.countedOnly()) {
        unknowns.addAll(counted(solution, state.stretchOf(chain.name())));
      } else if (solution.fit().path().isEmpty()) {
        unknowns.add(new Unknown(Kind.NO_WAY_ROUND, chain.name(), List.of()));
      }
      if (!errors.containsKey(chain.driver().shaft())) {
        unknowns.add(
            new Unknown(Kind.DRIVER_UNTIMED, chain.name(), List.of(chain.driver().shaft())));
      }
    }
    return unknowns;
  }

  /** What a counted chain lacks, the measurements that its wear asks for first. */
  private static List<Unknown> counted(ChainSolution solution, double stretchPercent) {
    Chain chain = solution.chain();
    List<Unknown> unknowns = new ArrayList<>();
    if (stretchPercent != 0) {
      if (chain.size().pitchMm().isEmpty()) {
        unknowns.add(new Unknown(Kind.PITCH_MISSING, chain.name(), List.of()));
      }
      for (List<String> run : MarkedRoute.of(chain).unmeasuredRuns()) {
        unknowns.add(new Unknown(Kind.RUN_MISSING, chain.name(), run));
      }
    }
    unknowns.add(new Unknown(Kind.COUNTED_ONLY, chain.name(), List.of()));
    return unknowns;
  }

  private static List<Unknown> of(Chain chain, Sprocket sprocket) {
    List<Unknown> unknowns = new ArrayList<>();
    List<String> shaft = List.of(sprocket.shaft());
    if (!sprocket.marked()) {
      unknowns.add(new Unknown(Kind.MARK_MISSING, chain.name(), shaft));
    } else if (sprocket.seen() == Seen.NEVER) {
      unknowns.add(new Unknown(Kind.MARK_NEVER_SEEN, chain.name(), shaft));
    }
    if (sprocket.joint() == Joint.FRICTION) {
      unknowns.add(new Unknown(Kind.FRICTION_JOINT, chain.name(), shaft));
    }
    return unknowns;
  }
}
