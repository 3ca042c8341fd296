package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.timing.ChainSolution;
import tightside.timing.Strand;

/** Many known faults of one drive, read and explained: how often the answer is right. */
public final class FaultStudy {

  static final int BINS = 10;

  private final DriveFaults faults;
  private final List<Evidence> plans;
  private final List<Grouping> groupings = new ArrayList<>();
  private final List<Clearness> clearness = new ArrayList<>();
  private final List<Hypothesis> hypotheses;

  public FaultStudy(Subject subject) {
    faults = Reasoner.of(subject).faults();
    hypotheses = Hypotheses.of(faults, Priors.usual());
    plans = plans();
    for (Evidence plan : plans) {
      Likelihood likelihood = Likelihood.of(faults, plan);
      Grouping grouping = Grouping.of(faults, likelihood, hypotheses);
      groupings.add(grouping);
      clearness.add(new Clearness(likelihood, faults.base(), grouping, hypotheses));
    }
  }

  /** Camshafts alone; with plungers; with phasers unplugged and the runs that are seen counted. */
  private List<Evidence> plans() {
    List<Reading> angles = new ArrayList<>();
    List<Reading> unplugged = new ArrayList<>();
    for (Shaft shaft : faults.subject().drive().shafts()) {
      if (shaft.role() == Role.CAMSHAFT && faults.quantities().times(shaft.name())) {
        angles.add(angle(shaft.name(), Condition.HOT_IDLE));
        unplugged.add(angle(shaft.name(), Condition.PHASER_UNPLUGGED));
      }
    }
    List<Reading> plungers = new ArrayList<>();
    List<Reading> counts = new ArrayList<>();
    for (ChainSolution chain : faults.right().chains()) {
      String name = chain.chain().name();
      chain.chain().tensioner().ifPresent(t -> plungers.add(new Reading.PlungerStands(name, 0, 1)));
      for (Strand strand : chain.strands()) {
        if (strand.taut() && strand.seen() != Seen.NEVER) {
          counts.add(new Reading.Counted(name, strand.from(), strand.to(), strand.links()));
          break;
        }
      }
    }
    List<Reading> some = new ArrayList<>(angles);
    some.addAll(plungers);
    List<Reading> most = new ArrayList<>(some);
    most.addAll(unplugged);
    most.addAll(counts);
    return List.of(
        new Evidence(angles, Spreads.usual()),
        new Evidence(some, Spreads.usual()),
        new Evidence(most, Spreads.usual()));
  }

  private static Reading angle(String shaft, Condition condition) {
    return new Reading.CamAngle(shaft, 0, 1, condition, false);
  }

  /**
   * One kind of trial, so many times.
   *
   * @param which the ordinal of the mismatch
   */
  public FaultTally run(int which, int trials, long seed) {
    FaultMaker.Mismatch mismatch = FaultMaker.Mismatch.values()[which];
    List<Hypothesis> drawn =
        mismatch == FaultMaker.Mismatch.OTHER_PRIORS ? Hypotheses.of(faults, even()) : hypotheses;
    FaultMaker maker = new FaultMaker(faults, drawn, seed + which);
    FaultTally tally = new FaultTally();
    for (int i = 0; i < trials; i++) {
      trial(maker, mismatch, i % plans.size(), tally);
    }
    return tally;
  }

  private static Priors even() {
    Priors priors = Priors.usual();
    for (Cause cause : Cause.values()) {
      priors = priors.with(cause, 1);
    }
    return priors;
  }

  private void trial(FaultMaker maker, FaultMaker.Mismatch mismatch, int plan, FaultTally tally) {
    Grouping grouping = groupings.get(plan);
    FaultMaker.Made made = maker.draw(mismatch);
    Evidence evidence = maker.read(made, plans.get(plan), mismatch);
    Weighing weighing = Weighing.of(faults, evidence, hypotheses);
    List<Group> groups = Weighing.groups(weighing.weighed(), grouping);
    Explanation truth = made.truth().what();
    int rank = 1;
    while (rank < groups.size() && !holds(groups.get(rank - 1), truth)) {
      rank++;
    }
    tally.trials++;
    tally.first += rank == 1 ? 1 : 0;
    tally.ranks += rank;
    tally.logScore += Math.log(Math.max(1e-12, groups.get(rank - 1).probability()));
    int bin = (int) Math.min(BINS - 1, Math.floor(BINS * groups.get(0).probability()));
    tally.answered[bin]++;
    tally.right[bin] += rank == 1 ? 1 : 0;
    if (clearness.get(plan).clear(made)) {
      boolean named = clearness.get(plan).named(made, groups.get(0));
      tally.clear++;
      tally.clearFirst += named ? 1 : 0;
      tally.clearAlone += rank == 1 ? 1 : 0;
      if (!named) {
        tally.missed(
            missed(made, evidence, groups, rank) + "; " + clearness.get(plan).nearest(made));
      }
    }
    made.amount()
        .ifPresent(
            amount -> {
              int at = place(made.truth());
              Marginal marginal = weighing.marginal(at);
              tally.amounts++;
              tally.covered +=
                  amount >= marginal.quantile(0.05) && amount <= marginal.quantile(0.95) ? 1 : 0;
            });
  }

  private int place(Hypothesis truth) {
    for (int i = 0; i < hypotheses.size(); i++) {
      if (hypotheses.get(i).what().equals(truth.what())) {
        return i;
      }
    }
    throw new IllegalStateException("no such hypothesis: " + truth.what());
  }

  private static String missed(
      FaultMaker.Made made, Evidence evidence, List<Group> groups, int rank) {
    Group first = groups.get(0);
    return "%s, %.3f, rank %d; %s, %.3f; read %s"
        .formatted(
            FaultWords.of(made.truth().what())
                + (made.amount().isPresent()
                    ? " by %.2f".formatted(made.amount().getAsDouble())
                    : ""),
            groups.get(rank - 1).probability(),
            rank,
            FaultWords.of(first.first().what()),
            first.probability(),
            evidence.readings().stream().map(FaultWords::of).toList());
  }

  private static boolean holds(Group group, Explanation truth) {
    return truth.cause() == Cause.SEVERAL
        ? group.first().what().cause() == Cause.SEVERAL
        : group.members().stream().anyMatch(m -> m.what().equals(truth));
  }

  /** How many kinds of trial there are. */
  public static int kinds() {
    return FaultMaker.Mismatch.values().length;
  }

  /** What a kind of trial is called. */
  public static String kind(int which) {
    return FaultMaker.Mismatch.values()[which].words();
  }

  /** Explanations that are weighed for the drive. */
  public int size() {
    return hypotheses.size();
  }
}
