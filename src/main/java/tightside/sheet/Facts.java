package tightside.sheet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.readings.Bench;
import tightside.readings.LayTable;
import tightside.readings.Situation;
import tightside.timing.ChainSolution;
import tightside.timing.LockingPlay;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;

/** All that the parts of a sheet are made of, worked out once. */
record Facts(Work work, Solver solver, Solution solution, List<ChainFacts> chains) {

  /** What every field says that needs a place in the drawing which the model has not. */
  static final String NO_GEOMETRY =
      "Not known for this drive: it takes the place of every shaft (x and y of its centre, mm) and"
          + " the faces that the chain rubs on; this model has none that fit.";

  static Facts of(Work work) {
    Solver solver = Solver.of(work.drive());
    Solution solution = solver.solve(State.reference());
    Bench bench = Bench.coverOff().with(new LockingPlay(work.play())).seeing(access(work.cover()));
    Situation right = Situation.of(solver, State.reference(), bench);
    List<ChainFacts> chains =
        solution.chains().stream().map(chain -> of(work.drive(), chain, right)).toList();
    return new Facts(work, solver, solution, chains);
  }

  private static ChainFacts of(Drive drive, ChainSolution solution, Situation right) {
    Chain chain = solution.chain();
    Set<String> marked = new LinkedHashSet<>();
    solution.strands().stream().map(Strand::from).forEach(marked::add);
    marked.remove(chain.driver().shaft());
    List<String> driven = List.copyOf(marked);
    return new ChainFacts(
        solution,
        right.held(chain.name()),
        right.held(chain.name()).isEmpty() ? Optional.empty() : LayTable.of(right, chain),
        driven,
        driven.stream().filter(s -> role(drive, s) == Role.CAMSHAFT).toList());
  }

  private static Role role(Drive drive, String shaft) {
    return drive.shaft(shaft).orElseThrow().role();
  }

  static Set<Seen> access(Seen cover) {
    return switch (cover) {
      case COVER_ON -> Set.of(Seen.COVER_ON);
      case BORESCOPE -> Set.of(Seen.COVER_ON, Seen.COVER_OFF, Seen.BORESCOPE);
      default -> Set.of(Seen.COVER_ON, Seen.COVER_OFF);
    };
  }

  Drive drive() {
    return work.drive();
  }

  Seen cover() {
    return work.cover();
  }

  String crank() {
    return drive().crankshaft().name();
  }

  /** Every camshaft that a chain drives, chain by chain. */
  List<String> camshafts() {
    return camshaftChains().flatMap(c -> c.camshafts().stream()).distinct().toList();
  }

  /** The chains that drive a camshaft by a marked sprocket: those that are worked on. */
  Stream<ChainFacts> camshaftChains() {
    return chains.stream().filter(c -> !c.camshafts().isEmpty());
  }

  /** How the cover is, to end a sentence with. */
  String withCover() {
    return switch (cover()) {
      case COVER_ON -> "with the front cover on";
      case BORESCOPE -> "with the cover off and a borescope";
      default -> "with the front cover off";
    };
  }
}
