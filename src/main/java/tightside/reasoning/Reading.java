package tightside.reasoning;

import java.util.List;
import java.util.OptionalDouble;

/** Something that was read of a drive. */
public sealed interface Reading {

  /** The most that anybody reads, crank degrees either way. */
  double MOST_DEGREES = 360;

  /**
   * A camshaft against the crankshaft, by the engine's sensors.
   *
   * @param crankDegrees from where it should be, positive = advanced
   * @param spreadDegrees standard deviation of one such reading
   * @param learned whether it was read against a learned value, which hides what was there when it
   *     was learned
   */
  record CamAngle(
      String shaft, double crankDegrees, double spreadDegrees, Condition condition, boolean learned)
      implements Reading {
    public CamAngle {
      refuseAngle(crankDegrees);
      refuseSpread(spreadDegrees);
    }
  }

  /**
   * Every edge of a cam wheel against the crankshaft. A turned cam moves all alike; a wheel that is
   * bent or runs out moves each by its own.
   *
   * @param crankDegrees edge by edge, from where each should be
   * @param spreadDegrees standard deviation of one edge
   */
  record CamEdges(
      String shaft, List<Double> crankDegrees, double spreadDegrees, Condition condition)
      implements Reading {
    public CamEdges {
      crankDegrees = List.copyOf(crankDegrees);
      crankDegrees.forEach(Reading::refuseAngle);
      refuseSpread(spreadDegrees);
      if (crankDegrees.size() < 2 || crankDegrees.size() > 24) {
        throw new IllegalArgumentException("a cam wheel has 2 to 24 edges");
      }
    }
  }

  /**
   * When valves open and close, seen in the pressure of a cylinder: the camshaft itself, past every
   * sensor.
   *
   * @param crankDegrees from where they should, positive = earlier
   */
  record ValveAngle(String shaft, double crankDegrees, double spreadDegrees) implements Reading {
    public ValveAngle {
      refuseAngle(crankDegrees);
      refuseSpread(spreadDegrees);
    }
  }

  /**
   * A shaft's mark beside its edge, the engine turned two turns forward by hand and stopped.
   *
   * @param crankDegrees of the shaft, in crank degrees
   */
  record MarkStands(String shaft, double crankDegrees, double spreadDegrees) implements Reading {
    public MarkStands {
      refuseAngle(crankDegrees);
      refuseSpread(spreadDegrees);
    }
  }

  /** How far a plunger stands out: anywhere between two lengths, mm. */
  record PlungerStands(String chain, double lowMm, double highMm) implements Reading {
    public PlungerStands {
      if (!(lowMm >= -5 && highMm <= 205 && lowMm <= highMm)) {
        throw new IllegalArgumentException("a plunger stands out from 0 to 200 mm");
      }
    }
  }

  /** Links counted from one marked link to the next. */
  record Counted(String chain, String from, String to, long links) implements Reading {}

  /**
   * A calliper over so many pitches of a chain pulled tight.
   *
   * @param lengthMm from roller centre to roller centre
   * @param spreadMm standard deviation of the length
   */
  record Calliper(String chain, int pitches, double lengthMm, double spreadMm) implements Reading {
    public Calliper {
      refuseSpread(spreadMm);
      if (pitches < 2 || !(lengthMm > 0)) {
        throw new IllegalArgumentException("a calliper spans two pitches or more");
      }
    }
  }

  /**
   * Whether a camshaft's locking tool goes in with the crankshaft locked.
   *
   * @param playShaftDegrees how far the camshaft can turn either way in its tool; nothing where
   *     nobody knows
   */
  record LockingTool(String shaft, boolean goesIn, OptionalDouble playShaftDegrees)
      implements Reading {}

  /**
   * Compression of all cylinders alike.
   *
   * @param percentOfExpected what the gauge shows of what it should
   */
  record Compression(double percentOfExpected, double spreadPercent) implements Reading {
    public Compression {
      refuseSpread(spreadPercent);
      if (!(percentOfExpected >= 0 && percentOfExpected <= 300)) {
        throw new IllegalArgumentException("compression lies from 0 to 300 % of what is expected");
      }
    }
  }

  /** What a look at the cheap causes found. */
  record Looked(Cheap at, boolean faultFound) implements Reading {}

  private static void refuseAngle(double degrees) {
    if (!(Math.abs(degrees) <= MOST_DEGREES)) {
      throw new IllegalArgumentException("an angle lies from -360 to 360 crank degrees");
    }
  }

  private static void refuseSpread(double spread) {
    if (!(spread > 0 && spread <= 100)) {
      throw new IllegalArgumentException("a spread lies above 0, up to 100, not " + spread);
    }
  }
}
