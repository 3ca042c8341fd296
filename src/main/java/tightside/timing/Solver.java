package tightside.timing;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Drive;
import tightside.drive.Gearing;
import tightside.drive.TautPath;
import tightside.drive.Tensioner;
import tightside.geometry.Rotation;

/**
 * The heart: a drive and a state give a solution.
 *
 * <p>A solver keeps what its drive is at the reference position, so that many states of one drive
 * cost no more than they must. It holds nothing else and may be shared.
 */
public final class Solver {

  private final Drive drive;
  private final Gearing gearing;
  private final Map<String, Datum> references;
  private final Map<String, BigInteger> realign;

  private Solver(Drive drive) {
    this.drive = drive;
    gearing = drive.gearing();
    references = new LinkedHashMap<>();
    realign = new HashMap<>();
    for (Chain chain : gearing.order()) {
      references.put(
          chain.name(),
          chain.countedOnly() ? CountedReference.of(chain) : Reference.of(drive, chain));
      realign.put(chain.name(), Realign.crankTurns(chain, gearing));
    }
  }

  public static Solver of(Drive drive) {
    return new Solver(drive);
  }

  /** The pure call. */
  public static Solution solve(Drive drive, State state) {
    return of(drive).solve(state);
  }

  public Drive drive() {
    return drive;
  }

  /**
   * Solves the drive in a state.
   *
   * @throws IllegalArgumentException if the state names a chain or a sprocket that the drive has
   *     not
   */
  public Solution solve(State state) {
    refuseStrangers(state);
    Map<String, Double> errors = new HashMap<>();
    errors.put(drive.crankshaft().name(), 0.0);
    Map<String, ChainSolution> solved = new HashMap<>();
    for (Chain chain : gearing.order()) {
      solved.put(chain.name(), solve(references.get(chain.name()), state, errors));
    }
    List<ChainSolution> chains = drive.chains().stream().map(c -> solved.get(c.name())).toList();
    List<ShaftTiming> shafts =
        drive.shafts().stream()
            .map(shaft -> shaft.name())
            .filter(name -> errors.containsKey(name) && marked(name))
            .map(name -> timing(name, errors.get(name)))
            .toList();
    return new Solution(drive, state, chains, shafts, Ignorance.of(drive, state, chains, errors));
  }

  private void refuseStrangers(State state) {
    for (Seat seat : state.reseats().keySet()) {
      if (drive.chain(seat.chain()).flatMap(c -> c.sprocketOn(seat.shaft())).isEmpty()) {
        throw new IllegalArgumentException("the drive has no sprocket " + seat);
      }
    }
    for (Map<String, Double> byChain : List.of(state.stretchPercent(), state.heldMm())) {
      for (String chain : byChain.keySet()) {
        if (drive.chain(chain).isEmpty()) {
          throw new IllegalArgumentException("the drive has no chain " + chain);
        }
      }
    }
  }

  /**
   * Nothing is said about the timing of a shaft that bears no mark; the crankshaft is the measure.
   */
  private boolean marked(String shaft) {
    return shaft.equals(drive.crankshaft().name()) || drive.marks(shaft);
  }

  private ShaftTiming timing(String shaft, double error) {
    double perTurn = gearing.perCrankTurn(shaft).doubleValue();
    return new ShaftTiming(shaft, error, error / perTurn);
  }

  private ChainSolution solve(Datum datum, State state, Map<String, Double> errors) {
    Chain chain = datum.chain();
    OptionalDouble held =
        Optional.ofNullable(state.heldMm().get(chain.name())).stream()
            .mapToDouble(Double::doubleValue)
            .findFirst();
    double stretch = state.stretchOf(chain.name());
    ChainFit fit = datum.fit(stretch, held);
    List<Strand> strands = List.of();
    Optional<Settling> settling = datum.settling(fit, stretch);
    if (datum.sound() && settling.isPresent()) {
      Drift drift = new Drift(datum, settling.get(), state);
      Double driving = errors.get(chain.driver().shaft());
      if (driving != null) {
        errors.putAll(drift.errors(driving));
      }
      strands = drift.strands();
    }
    Rotation travel = gearing.travel().get(chain.name());
    double turns = gearing.perCrankTurn(chain.driver().shaft()).doubleValue();
    return new ChainSolution(
        chain,
        travel,
        datum.fit(),
        fit,
        tensioner(chain, fit),
        datum.marksOff(),
        strands,
        realign.get(chain.name()),
        state.crankDegrees() * turns * chain.driver().teeth() / 360);
  }

  private static Optional<TensionerReading> tensioner(Chain chain, ChainFit fit) {
    return chain.tensioner().flatMap(t -> reading(t, fit));
  }

  private static Optional<TensionerReading> reading(Tensioner tensioner, ChainFit fit) {
    if (fit instanceof ChainFit.Solved solved) {
      boolean taut = solved.slackMm() == 0;
      return Optional.of(
          reading(tensioner, solved.extensionMm().orElse(0), taut, solved.slackMm()));
    }
    if (fit instanceof ChainFit.OutOfTravel out) {
      return Optional.of(reading(tensioner, out.travelMm(), false, out.slackLeftMm()));
    }
    return Optional.empty();
  }

  private static TensionerReading reading(
      Tensioner tensioner, double extension, boolean taut, double slackLeft) {
    return new TensionerReading(
        tensioner.name(),
        extension,
        tensioner.plunger().travelMm(),
        tensioner.plunger().stepsAt(extension),
        taut,
        slackLeft,
        tensioner.seen());
  }

  /** The path of a chain as it was when new, for those who show how far it has come. */
  public Optional<TautPath> newPath(String chain) {
    return references.get(chain).fit().path();
  }
}
