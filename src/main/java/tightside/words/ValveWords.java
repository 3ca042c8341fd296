package tightside.words;

import java.util.OptionalDouble;
import tightside.engine.Clearance;
import tightside.engine.Nearest;
import tightside.engine.PhaserTravel;
import tightside.engine.Squeeze;
import tightside.engine.ToothTable;
import tightside.engine.Valve;

/** Valves, pistons and compression in words. */
public final class ValveWords {

  /** From top dead centre at gas exchange to that of firing. */
  private static final double FIRING_DEGREES = 360;

  /** Half of the last digit that is shown. */
  private static final double SHOWN_DEGREES = 0.05;

  private ValveWords() {}

  /** "intake valve", "exhaust valve". */
  public static String name(Valve valve) {
    return valve.intake() ? "intake valve" : "exhaust valve";
  }

  /**
   * What a valve without room does.
   *
   * @param roomMm nothing, or negative by how far it would stand in the piston
   */
  public static String meets(double roomMm) {
    return -roomMm < 0.05
        ? "meets its piston"
        : "would stand " + Numbers.mm(-roomMm) + " in its piston";
  }

  /** When a valve opens and closes, and how near it comes to its piston. */
  public static String valve(Clearance clearance) {
    return "%s valve on %s: opens %s, closes %s; %s."
        .formatted(
            clearance.valve().intake() ? "Intake" : "Exhaust",
            clearance.valve().shaft(),
            angle(clearance.opensDegrees()),
            angle(clearance.closesDegrees()),
            nearest(clearance.least()));
  }

  /** How much room is left between valve and piston, and where. */
  public static String nearest(Nearest nearest) {
    String at = ", " + angle(nearest.atDegrees());
    return nearest.contact()
        ? "TOUCHES THE PISTON, " + size(nearest) + " too little room" + at
        : size(nearest) + " of room to the piston" + at;
  }

  private static String size(Nearest nearest) {
    double mm = Math.abs(nearest.clearanceMm());
    return mm < 0.05 ? "less than 0.1 mm" : Numbers.mm(mm);
  }

  /** An angle from top dead centre: "6.6 before", "12.0 after". */
  public static String angle(double degrees) {
    return Numbers.fixed(Math.abs(degrees), 1) + (degrees < 0 ? " before" : " after");
  }

  /**
   * Where the crank stands: "12.0 before top dead centre", or at which of both.
   *
   * @param degrees from top dead centre at gas exchange, within +-360
   */
  public static String fromTop(double degrees) {
    double size = Math.abs(degrees);
    if (size < SHOWN_DEGREES || size > FIRING_DEGREES - SHOWN_DEGREES) {
      return "at top dead centre of " + (size < 180 ? "gas exchange" : "firing");
    }
    return angle(degrees) + " top dead centre";
  }

  /** What is assumed where a model does not say where the engine stands. */
  public static String assumed() {
    return "Assumed: cylinder 1 stands at top dead centre of gas exchange at the reference position,"
        + " for the model does not say where it stands (at-reference).";
  }

  /** How long intake and exhaust valves are open together. */
  public static String overlap(double degrees) {
    return degrees > 0
        ? "Overlap: both are open for %s crank degrees.".formatted(Numbers.fixed(degrees, 1))
        : "No overlap: both are closed for %s crank degrees.".formatted(Numbers.fixed(-degrees, 1));
  }

  /** Compression, and an estimate of what a gauge would show. */
  public static String compression(Squeeze squeeze) {
    String nominal = "Compression: " + ratio(squeeze.nominal()) + " nominal";
    OptionalDouble bar = squeeze.crankingGaugeBar(Squeeze.USUAL_EXPONENT);
    return bar.isEmpty()
        ? nominal + "; no valve is an intake valve, so what is left of it is not known."
        : "%s, %s from where the intake valve closes; cranked, about %s bar by gauge (an estimate: compare, do not judge by it alone)."
            .formatted(
                nominal,
                ratio(squeeze.closed().getAsDouble()),
                Numbers.fixed(bar.getAsDouble(), 0));
  }

  private static String ratio(double ratio) {
    return Numbers.fixed(ratio, 1) + " to 1";
  }

  /** The least room over a phaser's travel. */
  public static String phaser(PhaserTravel travel) {
    double degrees = travel.advancedDegrees();
    String where =
        degrees == 0
            ? "with the phaser at rest"
            : "with the phaser %s crank degrees %s its rest"
                .formatted(
                    Numbers.fixed(Math.abs(degrees), 1), degrees > 0 ? "ahead of" : "behind");
    return "%s, over its phaser's travel: %s, %s."
        .formatted(travel.shaft(), nearest(travel.nearest()), where);
  }

  /** What one lay does to the valves. */
  public static String lay(ToothTable.Row row) {
    StringBuilder text = new StringBuilder(teeth(row.teeth())).append(": ");
    text.append(nearest(row.nearest()));
    row.closed().ifPresent(c -> text.append("; compression ").append(ratio(c)));
    row.overlapDegrees().ifPresent(o -> text.append("; ").append(shortOverlap(o)));
    return text.append(".").toString();
  }

  private static String shortOverlap(double degrees) {
    return degrees > 0 ? "overlap " + Numbers.fixed(degrees, 0) + " degrees" : "no overlap";
  }

  private static String teeth(int teeth) {
    if (teeth == 0) {
      return "as it stands";
    }
    return Numbers.count(Math.abs(teeth), "tooth").replace("tooths", "teeth")
        + (teeth > 0 ? " ahead" : " behind");
  }

  /** What to do where a valve touches. */
  public static String contactCaution() {
    return "A VALVE MEETS ITS PISTON. Do not crank this engine, and do not turn it by hand either,"
        + " before its camshafts stand right; the maker's procedure says how to get there.";
  }

  /** What the room leaves out. */
  public static String caution() {
    return "Room along the cylinder to a flat crown, cold and still: heat, carbon, a worn chain and"
        + " valves that float take from it. "
        + eachOther()
        + " How much an engine needs is its maker's figure.";
  }

  /** What no room here tells. */
  public static String eachOther() {
    return "Valve against valve is not reckoned.";
  }
}
