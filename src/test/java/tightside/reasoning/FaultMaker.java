package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.TDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import tightside.drive.Chain;
import tightside.drive.Plunger;

/** Draws faults of a drive, and what would be read of them. */
final class FaultMaker {

  /** How readings differ from what is assumed of them. */
  enum Mismatch {
    MATCHED("as assumed"),
    HALF_SPREAD("half the spread"),
    DOUBLE_SPREAD("twice the spread"),
    HEAVY_TAILS("heavy tails (t, 3 degrees of freedom)"),
    SHARED_BIAS("a bias of 1.5 crank degrees (s.d.) that all sensors share"),
    OTHER_PRIORS("every cause as frequent as any other"),
    UNLISTED("one fault in ten of a kind not on the list");

    private final String words;

    Mismatch(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /**
   * A fault that was drawn.
   *
   * @param truth what it is; "none of these" where it is not on the list
   * @param amount of a single fault that has one
   * @param quantities what it makes of the drive
   */
  record Made(Hypothesis truth, OptionalDouble amount, double[] quantities) {

    /** The fault with its plunger where it was drawn, and not just anywhere. */
    Hypothesis asItStands() {
      Factor.Open open = new Factor.Open(-1, truth.open().everything(), truth.open().found());
      return new Hypothesis(truth.what(), truth.effects(), truth.prior(), open);
    }
  }

  private static final double UNLISTED_DEGREES = 15;

  private final DriveFaults faults;
  private final List<Hypothesis> hypotheses;
  private final SplittableRandom random;

  FaultMaker(DriveFaults faults, List<Hypothesis> hypotheses, long seed) {
    this.faults = faults;
    this.hypotheses = hypotheses;
    random = new SplittableRandom(seed);
  }

  Made draw(Mismatch mismatch) {
    if (mismatch == Mismatch.UNLISTED && random.nextInt(10) == 0) {
      return unlisted();
    }
    double left = random.nextDouble();
    int i = 0;
    while (i < hypotheses.size() - 1 && left >= hypotheses.get(i).prior()) {
      left -= hypotheses.get(i).prior();
      i++;
    }
    return made(hypotheses.get(i));
  }

  private Made made(Hypothesis truth) {
    double[] quantities = truth.fixedPart(faults.base());
    double first = Double.NaN;
    for (Effect effect : truth.amounts()) {
      double amount = effect.amount().orElseThrow().inverseCumulativeProbability(uniform());
      effect.curve().addTo(quantities, amount);
      first = Double.isNaN(first) ? amount : first;
    }
    if (truth.what().cause() == Cause.OTHER) {
      for (String shaft : faults.quantities().shafts()) {
        quantities[faults.quantities().turned(shaft)] += Amounts.OTHER_DEGREES * normal();
      }
    }
    for (Effect effect : truth.effects()) {
      if (effect.freed().isPresent()) {
        String chain = truth.what().chain().orElseThrow();
        quantities[effect.freed().getAsInt()] = travel(chain) * random.nextDouble();
      }
    }
    boolean told = truth.effects().size() == 1 && truth.amounts().size() == 1;
    return new Made(truth, told ? OptionalDouble.of(first) : OptionalDouble.empty(), quantities);
  }

  /** Every camshaft somewhere else, links and plunger as they should be. */
  private Made unlisted() {
    double[] quantities = faults.base();
    for (String shaft : faults.quantities().shafts()) {
      quantities[faults.quantities().turned(shaft)] +=
          UNLISTED_DEGREES * (2 * random.nextDouble() - 1);
    }
    Hypothesis other =
        hypotheses.stream().filter(h -> h.what().cause() == Cause.OTHER).findFirst().orElseThrow();
    return new Made(other, OptionalDouble.empty(), quantities);
  }

  private double travel(String chain) {
    return faults
        .subject()
        .drive()
        .chain(chain)
        .flatMap(Chain::tensioner)
        .orElseThrow()
        .plunger()
        .travelMm();
  }

  private double uniform() {
    return Math.min(1 - 1e-12, Math.max(1e-12, random.nextDouble()));
  }

  private double normal() {
    return random.nextGaussian();
  }

  /** What is read of a fault, in the way of a plan that tells what is read and how well. */
  Evidence read(Made made, Evidence plan, Mismatch mismatch) {
    double[] angles = angles(made, plan, mismatch);
    List<Reading> readings = new ArrayList<>();
    int row = 0;
    for (Reading reading : plan.readings()) {
      if (reading instanceof Reading.CamAngle a) {
        double degrees = Math.max(-360, Math.min(360, angles[row++]));
        readings.add(
            new Reading.CamAngle(
                a.shaft(), degrees, a.spreadDegrees(), a.condition(), a.learned()));
      } else if (reading instanceof Reading.PlungerStands p) {
        readings.add(plunger(made, plan, p));
      } else {
        readings.add(counted(made, (Reading.Counted) reading));
      }
    }
    return new Evidence(readings, plan.spreads());
  }

  private double[] angles(Made made, Evidence plan, Mismatch mismatch) {
    Compiled compiled = Compiled.of(faults, plan);
    int n = compiled.rows().size();
    double[][] lower =
        new CholeskyDecomposition(new Array2DRowRealMatrix(compiled.covariance())).getL().getData();
    double times =
        switch (mismatch) {
          case HALF_SPREAD -> 0.5;
          case DOUBLE_SPREAD -> 2;
          default -> 1;
        };
    double shared = mismatch == Mismatch.SHARED_BIAS ? 1.5 * normal() : 0;
    double[] own = new double[n];
    for (int i = 0; i < n; i++) {
      own[i] =
          mismatch == Mismatch.HEAVY_TAILS
              ? TDistribution.of(3).inverseCumulativeProbability(uniform())
              : normal();
    }
    double[] read = new double[n];
    for (int i = 0; i < n; i++) {
      read[i] = compiled.rows().get(i).expected(made.quantities()) + shared;
      for (int j = 0; j <= i; j++) {
        read[i] += times * lower[i][j] * own[j];
      }
    }
    return read;
  }

  private Reading plunger(Made made, Evidence plan, Reading.PlungerStands reading) {
    Plunger plunger =
        faults
            .subject()
            .drive()
            .chain(reading.chain())
            .flatMap(Chain::tensioner)
            .orElseThrow()
            .plunger();
    PlungerFactor factor = Compiled.plunger(faults, plan.spreads(), reading);
    double width = Math.max(1, Compiled.leastWidthMm(plunger));
    boolean freed = made.truth().effects().stream().anyMatch(e -> e.freed().isPresent());
    boolean anywhere =
        made.truth().open().everything() || !freed && random.nextDouble() < Factor.SLIP;
    double at =
        anywhere
            ? plunger.travelMm() * random.nextDouble()
            : made.quantities()[factor.place()] + (freed ? 0 : factor.softMm() * normal());
    double low = width * Math.floor(Math.max(0, Math.min(plunger.travelMm(), at)) / width);
    return new Reading.PlungerStands(reading.chain(), low, low + width);
  }

  private Reading counted(Made made, Reading.Counted reading) {
    int place = faults.quantities().links(reading.chain(), reading.from(), reading.to());
    long links = Math.round(made.quantities()[place]);
    double slip = random.nextDouble();
    if (made.truth().what().cause() == Cause.OTHER) {
      links += random.nextInt(-3, 4);
    } else if (slip < 0.8 * Factor.SLIP) {
      links += random.nextBoolean() ? 1 : -1;
    } else if (slip < Factor.SLIP) {
      links += new int[] {-3, -2, 2, 3, 4}[random.nextInt(5)];
    }
    return new Reading.Counted(reading.chain(), reading.from(), reading.to(), links);
  }
}
