package tightside.readings;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Sprocket;
import tightside.timing.ChainSolution;
import tightside.timing.Strand;

/** All checks that there are on a drive. */
public final class Checks {

  private Checks() {}

  /** Chain by chain in the order of the model, then shaft by shaft, then the whole engine. */
  public static List<Check> of(Situation situation) {
    List<Check> checks = new ArrayList<>();
    situation.turned().chains().forEach(chain -> checks.addAll(of(chain)));
    Drive drive = situation.drive();
    drive.shafts().stream()
        .filter(s -> s.role() == Role.CAMSHAFT || s.role() == Role.CRANKSHAFT)
        .forEach(s -> checks.add(new LockingToolGoesIn(s.name())));
    checks.add(new Compression());
    return checks;
  }

  private static List<Check> of(ChainSolution solution) {
    Chain chain = solution.chain();
    List<Check> checks = new ArrayList<>();
    for (Strand strand : solution.strands()) {
      checks.add(new CountStrand(chain.name(), strand.from(), strand.to()));
      if (strand.taut()) {
        checks.add(new SagByThumb(chain.name(), strand.from(), strand.to()));
      }
    }
    if (chain.tensioner().isPresent()) {
      checks.add(new PlungerStands(chain.name()));
    }
    for (Sprocket sprocket : chain.sprockets().subList(1, chain.sprockets().size())) {
      if (sprocket.marked()) {
        checks.add(new DowelMeets(chain.name(), sprocket.shaft()));
        checks.add(new TwoTurnsAgain(chain.name(), sprocket.shaft()));
      }
    }
    return checks;
  }
}
