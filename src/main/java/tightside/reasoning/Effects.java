package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Joint;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.timing.ChainSolution;
import tightside.timing.Lay;
import tightside.timing.Seat;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.StretchLimit;

/** Everything single that can be wrong with a drive, and what it does to the quantities. */
final class Effects {

  /** How a reseat of 1, 2 and 3 teeth is met, either way; common practice, no source. */
  private static final double[] TEETH_SHARES = {0, 0.76, 0.18, 0.06};

  /** How a joint held by clamp alone slips beside one that has to shear first; from memory. */
  private static final double FRICTION_SHARE = 10;

  private static final int STRETCH_POINTS = 16;
  private static final int CHANGE_POINTS = 5;

  private final Subject subject;
  private final Solver solver;
  private final Solution right;
  private final Quantities quantities;
  private final double[] base;
  private final List<Effect> all = new ArrayList<>();

  private Effects(Subject subject) {
    this.subject = subject;
    solver = Solver.of(subject.drive());
    right = solver.solve(State.reference());
    quantities = Quantities.of(right);
    base = quantities.valuesOf(right);
  }

  /** Every effect on a drive, in the order of its causes. */
  static DriveFaults of(Subject subject) {
    Effects effects = new Effects(subject);
    Drive drive = subject.drive();
    drive.chains().forEach(effects::stretch);
    drive.chains().forEach(effects::reseats);
    List<Shaft> camshafts =
        drive.shafts().stream()
            .filter(s -> s.role() == Role.CAMSHAFT && effects.quantities.times(s.name()))
            .toList();
    camshafts.forEach(s -> effects.phaser(s.name()));
    camshafts.forEach(s -> effects.joint(s.name()));
    camshafts.forEach(s -> effects.sensor(s.name()));
    effects.crankSensor(camshafts);
    for (Chain chain : drive.chains()) {
      if (!chain.countedOnly()) {
        effects.tensioner(chain);
        effects.guide(chain);
        effects.centre(chain);
      }
    }
    return new DriveFaults(
        subject, effects.quantities, effects.right, effects.base, List.copyOf(effects.all));
  }

  private double[] none() {
    return new double[quantities.size()];
  }

  private double[] change(Solution solution) {
    double[] change = quantities.valuesOf(solution);
    for (int i = 0; i < change.length; i++) {
      change[i] -= base[i];
    }
    return change;
  }

  private static boolean finite(double[] change) {
    for (double value : change) {
      if (!Double.isFinite(value)) {
        return false;
      }
    }
    return true;
  }

  private void stretch(Chain chain) {
    List<Double> amounts = new ArrayList<>();
    List<double[]> changes = new ArrayList<>();
    OptionalDouble limit = StretchLimit.of(subject.drive(), chain);
    for (int i = 0; i <= STRETCH_POINTS; i++) {
      double percent = Amounts.MOST_STRETCH * i / STRETCH_POINTS;
      double before = amounts.isEmpty() ? 0 : amounts.get(amounts.size() - 1);
      if (limit.isPresent() && limit.getAsDouble() > before && limit.getAsDouble() < percent) {
        add(chain, limit.getAsDouble(), amounts, changes);
      }
      if (!add(chain, percent, amounts, changes)) {
        break;
      }
    }
    if (amounts.size() > 2) {
      double most = amounts.get(amounts.size() - 1);
      all.add(
          Effect.along(
              Explanation.chain(Cause.STRETCH, chain.name()),
              1,
              Amounts.stretch(most),
              Curve.upTo(amounts, changes)));
    }
  }

  private boolean add(Chain chain, double percent, List<Double> amounts, List<double[]> changes) {
    Solution solution = solver.solve(State.reference().stretched(chain.name(), percent));
    double[] change = change(solution);
    boolean held =
        chain.countedOnly() || solution.chain(chain.name()).orElseThrow().fit().path().isPresent();
    boolean sound = finite(change) && held;
    if (sound) {
      amounts.add(percent);
      changes.add(change);
    }
    return sound;
  }

  private void reseats(Chain chain) {
    for (Sprocket sprocket : chain.sprockets()) {
      if (!sprocket.marked()) {
        continue;
      }
      Seat seat = new Seat(chain.name(), sprocket.shaft());
      for (int teeth = -Lay.MOST_TEETH; teeth <= Lay.MOST_TEETH; teeth++) {
        if (teeth != 0) {
          all.add(
              Effect.fixed(
                  Explanation.reseat(chain.name(), sprocket.shaft(), teeth),
                  TEETH_SHARES[Math.abs(teeth)] / 2,
                  change(solver.solve(State.reference().reseated(seat, teeth)))));
        }
      }
    }
  }

  private void phaser(String shaft) {
    boolean named = subject.phasers().containsKey(shaft);
    if (!named && !subject.phasers().isEmpty()) {
      return;
    }
    var amount = Amounts.phaser(Optional.ofNullable(subject.phasers().get(shaft)));
    double[] driven = none();
    driven[quantities.driven(shaft)] = 1;
    double[] stuck = none();
    stuck[quantities.turned(shaft)] = 1;
    all.add(
        Effect.by(
            Explanation.shaft(Cause.PHASER, shaft, Explanation.Manner.DRIVEN), 1, amount, driven));
    all.add(
        Effect.by(
            Explanation.shaft(Cause.PHASER, shaft, Explanation.Manner.STUCK), 1, amount, stuck));
  }

  private void joint(String shaft) {
    double[] turned = none();
    turned[quantities.turned(shaft)] = 1;
    boolean friction =
        subject.drive().chainsOn(shaft).stream()
            .flatMap(c -> c.sprocketOn(shaft).stream())
            .anyMatch(s -> s.joint() == Joint.FRICTION);
    all.add(
        Effect.by(
            Explanation.shaft(Cause.JOINT, shaft, null),
            friction ? FRICTION_SHARE : 1,
            Amounts.joint(),
            turned));
  }

  private void sensor(String shaft) {
    int wheel = quantities.wheel(shaft);
    double[] reads = none();
    reads[wheel] = 1;
    all.add(
        Effect.by(
            Explanation.shaft(Cause.SENSOR, shaft, Explanation.Manner.TURNED),
            1,
            Amounts.sensor(),
            reads));
    all.add(
        Effect.by(
                Explanation.shaft(Cause.SENSOR, shaft, Explanation.Manner.BENT),
                0.5,
                Amounts.sensor(),
                reads)
            .bending(wheel));
  }

  /** The crankshaft's sensor: every camshaft reads off by as much. */
  private void crankSensor(List<Shaft> camshafts) {
    double[] reads = none();
    camshafts.forEach(s -> reads[quantities.wheel(s.name())] = 1);
    String crank = subject.drive().crankshaft().name();
    all.add(
        Effect.by(
            Explanation.shaft(Cause.SENSOR, crank, Explanation.Manner.TURNED),
            1,
            Amounts.sensor(),
            reads));
  }

  private void tensioner(Chain chain) {
    if (chain.tensioner().isEmpty()) {
      return;
    }
    double[] swings = none();
    subject.drive().gearing().turns().keySet().stream()
        .filter(quantities::times)
        .filter(shaft -> hangsOn(shaft, chain.name()))
        .forEach(shaft -> swings[quantities.turned(shaft)] = 1);
    all.add(
        Effect.by(Explanation.chain(Cause.TENSIONER, chain.name()), 1, Amounts.swing(), swings)
            .freeing(quantities.plunger(chain.name())));
  }

  /** Whether a shaft is driven by a chain, at first hand or through others. */
  private boolean hangsOn(String shaft, String chain) {
    Optional<String> driving = subject.drive().gearing().drivenBy(shaft);
    return driving.isPresent()
        && (driving.get().equals(chain)
            || hangsOn(subject.drive().chain(driving.get()).orElseThrow().driver().shaft(), chain));
  }

  private void guide(Chain chain) {
    changed(
        chain,
        Cause.GUIDE,
        Amounts.MOST_GUIDE_MM,
        mm -> ChangedDrive.worn(right.drive(), chain, mm));
  }

  private void centre(Chain chain) {
    changed(
        chain,
        Cause.CENTRE,
        Amounts.MOST_CENTRE_MM,
        mm -> ChangedDrive.nearer(right.drive(), chain, mm));
  }

  /** What becomes of a drive with its parts moved by some mm. */
  private interface Moved {
    Optional<Drive> by(double mm);
  }

  private void changed(Chain chain, Cause cause, double most, Moved moved) {
    List<Double> amounts = new ArrayList<>(List.of(0.0));
    List<double[]> changes = new ArrayList<>(List.of(none()));
    for (int i = 1; i <= CHANGE_POINTS; i++) {
      double mm = most * i / CHANGE_POINTS;
      Optional<double[]> change = moved.by(mm).flatMap(drive -> movedChange(drive, chain));
      if (change.isEmpty()) {
        break;
      }
      amounts.add(mm);
      changes.add(change.get());
    }
    double reached = amounts.get(amounts.size() - 1);
    if (amounts.size() > 2 && largest(changes.get(changes.size() - 1)) > 0.05) {
      all.add(
          Effect.along(
              Explanation.chain(cause, chain.name()),
              1,
              cause == Cause.GUIDE ? Amounts.guide(reached) : Amounts.centre(reached),
              Curve.upTo(amounts, changes)));
    }
  }

  private static double largest(double[] change) {
    double most = 0;
    for (double value : change) {
      most = Math.max(most, Math.abs(value));
    }
    return most;
  }

  private Optional<double[]> movedChange(Drive drive, Chain chain) {
    Solution solution = Solver.solve(drive, State.reference());
    ChainSolution after = solution.chain(chain.name()).orElseThrow();
    ChainSolution before = right.chain(chain.name()).orElseThrow();
    if (after.strands().size() != before.strands().size() || after.strands().isEmpty()) {
      return Optional.empty();
    }
    double[] change = none();
    Map<String, Double> degrees = Drifted.crankDegrees(right, solution, chain.name());
    degrees.forEach(
        (shaft, value) -> {
          if (quantities.times(shaft)) {
            change[quantities.turned(shaft)] = value;
          }
        });
    if (after.tensioner().isPresent() && before.tensioner().isPresent()) {
      change[quantities.plunger(chain.name())] =
          after.tensioner().get().extensionMm() - before.tensioner().get().extensionMm();
    }
    return finite(change) ? Optional.of(change) : Optional.empty();
  }
}
