package tightside.reasoning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.timing.ChainSolution;
import tightside.timing.Strand;

/** Many known faults of one drive, read and explained: how often the answer is right. */
public final class FaultStudy {

  /** Below 3 spreads a fault is not clear (what reads alike is grouped below the same). */
  private static final double CLEAR = Grouping.ALIKE;

  private static final int BINS = 10;

  private final DriveFaults faults;
  private final List<Evidence> plans;
  private final List<Grouping> groupings = new ArrayList<>();
  private final List<Hypothesis> hypotheses;

  public FaultStudy(Subject subject) {
    faults = Reasoner.of(subject).faults();
    hypotheses = Hypotheses.of(faults, Priors.usual());
    plans = plans();
    for (Evidence plan : plans) {
      groupings.add(Grouping.of(faults, Likelihood.of(faults, plan), hypotheses));
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

  /** What came of one trial after another. */
  public static final class Tally {
    private final int[] answered = new int[BINS];
    private final int[] right = new int[BINS];
    private int trials;
    private int first;
    private double ranks;
    private double logScore;
    private int clear;
    private int clearFirst;
    private int amounts;
    private int covered;

    public void add(Tally other) {
      for (int i = 0; i < BINS; i++) {
        answered[i] += other.answered[i];
        right[i] += other.right[i];
      }
      trials += other.trials;
      first += other.first;
      ranks += other.ranks;
      logScore += other.logScore;
      clear += other.clear;
      clearFirst += other.clearFirst;
      amounts += other.amounts;
      covered += other.covered;
    }

    private static String share(int of, int all) {
      return all == 0 ? "  -  " : "%5.1f".formatted(100.0 * of / all);
    }

    /** Of answers given at 80 to 90 %, how many in 100 are right; nothing below so many answers. */
    double rightAtEighty() {
      return 100.0 * right[8] / Math.max(1, answered[8]);
    }

    double clearFirst() {
      return 100.0 * clearFirst / Math.max(1, clear);
    }

    double covered() {
      return 100.0 * covered / Math.max(1, amounts);
    }

    int answeredAtEighty() {
      return answered[8];
    }

    public String line() {
      StringBuilder line = new StringBuilder();
      line.append(
          "%6d  %s  %5.2f  %6.2f  %s of %5d  %s of %5d "
              .formatted(
                  trials,
                  share(first, trials),
                  ranks / trials,
                  logScore / trials,
                  share(clearFirst, clear),
                  clear,
                  share(covered, amounts),
                  amounts));
      for (int i = 4; i < BINS; i++) {
        line.append("  %s (%d)".formatted(share(right[i], answered[i]), answered[i]));
      }
      return line.toString();
    }

    public static String head() {
      return "trials  first  rank   log p   clear first     covered of 90   right when answered at"
          + " 40-50, 50-60, ... 90-100 % (so often)";
    }
  }

  /**
   * One kind of trial, so many times.
   *
   * @param which the ordinal of the mismatch
   */
  public Tally run(int which, int trials, long seed) {
    FaultMaker.Mismatch mismatch = FaultMaker.Mismatch.values()[which];
    List<Hypothesis> drawn =
        mismatch == FaultMaker.Mismatch.OTHER_PRIORS ? Hypotheses.of(faults, even()) : hypotheses;
    FaultMaker maker = new FaultMaker(faults, drawn, seed + which);
    Tally tally = new Tally();
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

  private void trial(FaultMaker maker, FaultMaker.Mismatch mismatch, int plan, Tally tally) {
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
    if (clear(made, plan, grouping)) {
      tally.clear++;
      tally.clearFirst += rank == 1 ? 1 : 0;
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

  private static boolean holds(Group group, Explanation truth) {
    return truth.cause() == Cause.SEVERAL
        ? group.first().what().cause() == Cause.SEVERAL
        : group.members().stream().anyMatch(m -> m.what().equals(truth));
  }

  private static final Set<Cause> NO_FAULT_OF_THE_LIST =
      EnumSet.of(Cause.NONE, Cause.SEVERAL, Cause.OTHER);

  /** Whether every explanation outside its group lies over three spreads from what it shows. */
  private boolean clear(FaultMaker.Made made, int plan, Grouping grouping) {
    if (NO_FAULT_OF_THE_LIST.contains(made.truth().what().cause())) {
      return false;
    }
    Separation separation = new Separation(Likelihood.of(faults, plans.get(plan)), faults.base());
    int own = grouping.of(made.truth().what());
    Hypothesis stands = made.asItStands();
    for (Hypothesis other : hypotheses) {
      Cause cause = other.what().cause();
      if (cause != Cause.SEVERAL
          && cause != Cause.OTHER
          && grouping.of(other.what()) != own
          && separation.nearest(made.quantities(), stands, other) < CLEAR) {
        return false;
      }
    }
    return true;
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
