package tightside.readings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.timing.ChainSolution;
import tightside.timing.HoldBack;
import tightside.timing.Reseating;
import tightside.timing.ShaftTiming;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;
import tightside.timing.WrongLay;

/**
 * A drive as it was put together, both with its shafts still locked and once it has been turned.
 */
public final class Situation {

  private final LockedDrive locked;
  private final Solution turned;
  private final Bench bench;

  private Situation(LockedDrive locked, Solution turned, Bench bench) {
    this.locked = locked;
    this.turned = turned;
    this.bench = bench;
  }

  /**
   * @param state reseats and wear, and where tensioners are held; fully back unless it says so
   */
  public static Situation of(Solver solver, State state, Bench bench) {
    LockedDrive locked = LockedDrive.of(solver, state, bench.play());
    return new Situation(locked, solver.solve(locked.free()), bench);
  }

  /** The same drive with one chain laid otherwise, and all else as it is. */
  public Situation reseated(Reseating reseating) {
    State state = reseating.appliedTo(locked.worn());
    LockedDrive other = new LockedDrive(locked.solver(), state, locked.held(), locked.letGo());
    return new Situation(other, locked.solver().solve(other.free()), bench);
  }

  public Drive drive() {
    return turned.drive();
  }

  public Bench bench() {
    return bench;
  }

  /** How the drive stands once turned. */
  public Solution turned() {
    return turned;
  }

  /** How the tensioner of a chain is held back, where it can be. */
  public Optional<HoldBack> held(String chain) {
    return locked.held(chain);
  }

  /** How a chain was laid. */
  Reseating reseating(String chain) {
    return Reseating.in(locked.worn(), chain);
  }

  /**
   * Whether the chain could be laid so, the driving sprocket being the one that stays: all that is
   * wrong is said of the others.
   */
  Optional<WrongLay> lay(String chain) {
    return held(chain).map(hold -> hold.judge(reseating(chain).fromDriver(hold.chain())));
  }

  /** Whether the chain was laid with every shaft locked in its place. */
  boolean lockedWhileLaid(String chain) {
    return lay(chain).filter(WrongLay::possible).isPresent();
  }

  /** How far the plunger comes out once it is let go, the shafts still locked, mm. */
  OptionalDouble extensionLetGo(String chain) {
    return locked.letGo(chain).stream()
        .mapToDouble(slack -> slack.extensionLetGo(reseating(chain)))
        .findFirst();
  }

  Optional<Strand> strand(String chain, String from, String to) {
    return turned.chain(chain).map(ChainSolution::strands).stream()
        .flatMap(List::stream)
        .filter(s -> s.from().equals(from) && s.to().equals(to))
        .findFirst();
  }

  /** By how much a shaft is turned from its place for its chain to go on, its own degrees. */
  double turnedForLay(String shaft) {
    return drive().chains().stream()
        .map(Chain::name)
        .flatMap(chain -> lay(chain).stream())
        .mapToDouble(lay -> lay.turnNeeded(shaft).orElse(0))
        .max()
        .orElse(0);
  }

  /** Where every shaft stands once turned, crank degrees by shaft. */
  Map<String, Double> crankDegrees() {
    Map<String, Double> degrees = new HashMap<>();
    for (ShaftTiming timing : turned.shafts()) {
      degrees.put(timing.shaft(), timing.crankDegrees());
    }
    return degrees;
  }
}
