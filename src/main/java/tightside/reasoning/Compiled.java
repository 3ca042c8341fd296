package tightside.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tightside.drive.Chain;
import tightside.drive.Plunger;
import tightside.drive.Tensioner;
import tightside.readings.LockingToolGoesIn;

/**
 * Readings as rows of normal numbers with their covariance, and factors of another kind.
 *
 * @param width how many quantities there are
 * @param rows in the order of the readings
 */
record Compiled(int width, List<Row> rows, List<Factor> factors, Spreads spreads) {

  /** What a calliper's length leaves open where an explanation forces nothing, percent. */
  private static final double OPEN_PERCENT = 1;

  Compiled {
    rows = List.copyOf(rows);
    factors = List.copyOf(factors);
  }

  static Compiled of(DriveFaults faults, Evidence evidence) {
    List<Row> rows = new ArrayList<>();
    List<Factor> factors = new ArrayList<>();
    for (Reading reading : evidence.readings()) {
      add(faults, evidence.spreads(), reading, rows, factors);
    }
    return new Compiled(faults.quantities().size(), rows, factors, evidence.spreads());
  }

  private static void add(
      DriveFaults faults, Spreads spreads, Reading reading, List<Row> rows, List<Factor> factors) {
    Quantities q = faults.quantities();
    double times = spreads.factor();
    if (reading instanceof Reading.CamAngle angle) {
      rows.add(
          sensed(
              q,
              angle.shaft(),
              angle.crankDegrees(),
              times * angle.spreadDegrees(),
              angle.condition(),
              angle.learned(),
              false,
              times));
    } else if (reading instanceof Reading.CamEdges edges) {
      for (double edge : edges.crankDegrees()) {
        rows.add(
            sensed(
                q,
                edges.shaft(),
                edge,
                times * edges.spreadDegrees(),
                edges.condition(),
                false,
                true,
                times));
      }
    } else if (reading instanceof Reading.ValveAngle valve) {
      int turned = q.turned(valve.shaft());
      int[] places = {turned, q.driven(valve.shaft())};
      double spread = times * valve.spreadDegrees();
      rows.add(new Row(places, valve.crankDegrees(), spread, -1, false, false, turned));
    } else if (reading instanceof Reading.MarkStands mark) {
      int turned = q.turned(mark.shaft());
      double spread = times * mark.spreadDegrees();
      rows.add(new Row(new int[] {turned}, mark.crankDegrees(), spread, -1, false, false, turned));
    } else if (reading instanceof Reading.Calliper calliper) {
      rows.add(calliper(faults, calliper, times));
    } else {
      factors.add(factor(faults, spreads, reading));
    }
  }

  static Row sensed(
      Quantities q,
      String shaft,
      double degrees,
      double spread,
      Condition condition,
      boolean learned,
      boolean edge,
      double times) {
    int turned = q.turned(shaft);
    int wheel = q.wheel(shaft);
    int[] places =
        condition.phaserFree()
            ? new int[] {turned, wheel, q.driven(shaft)}
            : new int[] {turned, wheel};
    double all = Math.hypot(spread, times * condition.extraSpreadDegrees());
    return new Row(places, degrees, all, wheel, learned, edge, turned);
  }

  private static Row calliper(DriveFaults faults, Reading.Calliper calliper, double times) {
    Chain chain = faults.subject().drive().chain(calliper.chain()).orElseThrow();
    double newMm = calliper.pitches() * chain.pitchMm();
    double percent = (calliper.lengthMm() - newMm) / newMm * 100;
    double spread = times * calliper.spreadMm() / newMm * 100;
    int place = faults.quantities().stretch(chain.name());
    double all = Math.hypot(spread, times * Spreads.usual().newChainPercent());
    return new Row(new int[] {place}, percent, all, -1, false, false, -1);
  }

  static Factor factor(DriveFaults faults, Spreads spreads, Reading reading) {
    Quantities q = faults.quantities();
    if (reading instanceof Reading.PlungerStands plunger) {
      return plunger(faults, spreads, plunger);
    }
    if (reading instanceof Reading.Counted count) {
      return new CountFactor(q.links(count.chain(), count.from(), count.to()), count.links());
    }
    if (reading instanceof Reading.LockingTool tool) {
      double perShaft =
          1 / faults.subject().drive().gearing().perCrankTurn(tool.shaft()).doubleValue();
      double play = tool.playShaftDegrees().orElse(LockingToolGoesIn.PASSES_DEGREES);
      return new ToolFactor(
          q.turned(tool.shaft()),
          tool.goesIn(),
          play * perShaft,
          spreads.factor() * spreads.toolDegrees() * perShaft,
          Amounts.OTHER_DEGREES);
    }
    if (reading instanceof Reading.Looked looked) {
      return new LookFactor(looked.at(), looked.faultFound());
    }
    Reading.Compression compression = (Reading.Compression) reading;
    Map<String, Integer> places = new HashMap<>();
    var engine = faults.subject().engine().orElseThrow();
    engine.camshafts().forEach(shaft -> places.put(shaft, q.turned(shaft)));
    return new CompressionFactor(
        engine,
        places,
        compression.percentOfExpected(),
        spreads.factor() * compression.spreadPercent());
  }

  /** At least as wide as a plunger can be read: 0.4 mm across, and one step of its ratchet. */
  static double leastWidthMm(Plunger plunger) {
    return Math.max(2 * Spreads.PLUNGER_BEST_MM, plunger.stepMm().orElse(0));
  }

  static PlungerFactor plunger(DriveFaults faults, Spreads spreads, Reading.PlungerStands reading) {
    Plunger plunger =
        faults
            .subject()
            .drive()
            .chain(reading.chain())
            .flatMap(Chain::tensioner)
            .map(Tensioner::plunger)
            .orElseThrow();
    double width = Math.max(reading.highMm() - reading.lowMm(), leastWidthMm(plunger));
    double middle = (reading.highMm() + reading.lowMm()) / 2;
    double newChain =
        spreads.newChainPercent() * Math.abs(faults.plungerPerPercent(reading.chain()));
    return new PlungerFactor(
        faults.quantities().plunger(reading.chain()),
        middle - width / 2,
        middle + width / 2,
        spreads.factor() * Math.hypot(spreads.plungerMm(), newChain),
        plunger.travelMm());
  }

  double[] read() {
    return rows.stream().mapToDouble(Row::read).toArray();
  }

  /** Readings of one sensor share its bias, and those against a learned value what it hides. */
  double[][] covariance() {
    int n = rows.size();
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        covariance[i][j] = shared(rows.get(i), rows.get(j));
      }
      covariance[i][i] += rows.get(i).spread() * rows.get(i).spread();
    }
    return covariance;
  }

  double shared(Row one, Row other) {
    if (one.wheel() < 0 || one.wheel() != other.wheel()) {
      return 0;
    }
    double sensor = spreads.factor() * spreads.sensorDegrees();
    double learned = one.learned() && other.learned() ? spreads.learnedDegrees() : 0;
    return sensor * sensor + learned * learned;
  }

  double[][] covarianceBent(int wheel) {
    double[][] covariance = covariance();
    for (int i = 0; i < covariance.length; i++) {
      if (rows.get(i).edge() && rows.get(i).wheel() == wheel) {
        covariance[i][i] += Amounts.BENT_DEGREES * Amounts.BENT_DEGREES;
      }
    }
    return covariance;
  }

  /** Nothing is forced: every shaft stands anywhere, by itself. */
  double[][] covarianceOpen() {
    double[][] covariance = covariance();
    for (int i = 0; i < covariance.length; i++) {
      for (int j = 0; j < covariance.length; j++) {
        covariance[i][j] += open(rows.get(i), rows.get(j));
      }
    }
    return covariance;
  }

  static double open(Row one, Row other) {
    if (one.openTo() != other.openTo()) {
      return 0;
    }
    return one.openTo() < 0
        ? (one == other ? OPEN_PERCENT * OPEN_PERCENT : 0)
        : Amounts.OTHER_DEGREES * Amounts.OTHER_DEGREES;
  }
}
