package tightside.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.geometry.Rotation;
import tightside.timing.ChainSolution;
import tightside.timing.Lag;
import tightside.timing.ShaftTiming;
import tightside.timing.Strand;
import tightside.timing.TensionerReading;

/** What a solution says, in sentences that a technician can act on. */
public final class Sentences {

  private Sentences() {}

  /** The chain itself in one line. */
  public static String chain(ChainSolution solution) {
    Chain chain = solution.chain();
    return "Chain %s: %s%s%s, running %s as seen from the front"
        .formatted(
            chain.name(),
            chain
                .size()
                .kind()
                .map(kind -> kind.name().toLowerCase(Locale.ROOT) + " chain, ")
                .orElse(""),
            chain.size().pitchMm().isPresent()
                ? "pitch " + Numbers.sizeMm(chain.pitchMm()) + ", "
                : "",
            Numbers.count(chain.links(), "link"),
            rotation(solution.travel()));
  }

  public static String rotation(Rotation rotation) {
    return rotation == Rotation.CLOCKWISE ? "clockwise" : "counterclockwise";
  }

  /** Both ways of counting a strand, so that nobody is off by one. */
  public static String count(Strand strand) {
    return "Count %s from the %s mark to the %s mark: %s between the two painted ones."
        .formatted(
            Numbers.count(strand.links(), "link"),
            strand.from(),
            strand.to(),
            Numbers.count(strand.between(), "plain link"));
  }

  /**
   * What a person would count now, against what belongs there.
   *
   * @param right the same strand with everything on its tooth
   */
  public static String countNow(Strand now, Strand right) {
    long over = now.links() - right.links();
    String judged =
        over == 0
            ? "as it should be."
            : "%s too %s; %s belong there."
                .formatted(
                    Numbers.count(Math.abs(over), "link"),
                    over > 0 ? "many" : "few",
                    right.links());
    return "From the %s mark to the %s mark there are now %s, %s between the marks: %s"
        .formatted(
            now.from(),
            now.to(),
            Numbers.count(now.links(), "link"),
            Numbers.count(now.between(), "plain link"),
            judged);
  }

  /** Which side it is, and what it takes to see it. */
  public static String side(Strand strand) {
    return (strand.taut() ? "tight" : "slack side") + ", " + seen(strand.seen());
  }

  public static String seen(Seen seen) {
    return switch (seen) {
      case COVER_ON -> "seen with the cover on";
      case COVER_OFF -> "seen with the cover off";
      case BORESCOPE -> "seen by borescope";
      case NEVER -> "can't be seen";
    };
  }

  /** A taut strand whose pitches are too far from a whole number. */
  public static String notTrusted(Strand strand) {
    return "Do not trust this count, nor the count of the slack side, which it leaves:"
        + " the tight run from %s to %s measures %s pitches, %s away from a"
            .formatted(
                strand.from(),
                strand.to(),
                Numbers.fixed(strand.pitches(), 2),
                Numbers.fixed(Math.abs(strand.misfit().orElse(0)), 2))
        + " whole number; check the model's marks, centres and teeth.";
  }

  /** Where the plunger stands and what is left of its travel. */
  public static String tensioner(TensionerReading reading, OptionalDouble runsOutPercent) {
    String steps =
        reading.steps().isPresent() ? ", on ratchet step " + reading.steps().getAsLong() : "";
    String out =
        "%s: plunger %s out of %s%s"
            .formatted(
                name(reading),
                Numbers.mm(reading.extensionMm()),
                Numbers.mm(reading.travelMm()),
                steps);
    String runsOut =
        runsOutPercent.isPresent()
            ? (reading.taut() ? "its travel runs out at " : "its travel ran out at ")
                + Numbers.percent(runsOutPercent.getAsDouble())
                + " stretch"
            : "no stretch that can be entered uses its travel up";
    if (reading.taut()) {
      return out + "; it keeps the chain tight, and " + runsOut + ".";
    }
    return out
        + ": OUT OF TRAVEL, "
        + Numbers.mm(reading.slackLeftMm())
        + " of chain is left slack; "
        + runsOut
        + ".";
  }

  private static String name(TensionerReading reading) {
    String name = reading.name();
    return name.equals("tensioner") ? "Tensioner" : "Tensioner " + name;
  }

  /** The slack of a chain that nothing keeps tight. */
  public static String freeSlack(double slackMm) {
    return "No tensioner: "
        + Numbers.mm(slackMm)
        + " of chain is free slack, on the strand that leaves the driving sprocket.";
  }

  /** What stands over every answer of a drive without geometry. */
  public static String countedOnly() {
    return "COUNTED ONLY: no geometry. The links between the marks are as given, by count or from"
        + " the maker; nothing here proves them.";
  }

  /** What it would take to say how much chain is over while the tensioner is held back. */
  public static String holdBackNeeds() {
    return "this drive is counted only, and how much chain is over needs its geometry:"
        + " the place of every shaft (at), the bearing of every mark, the pitch and plate height of"
        + " every chain, the faces, and the arm or shoe with its plunger";
  }

  /** What is not weighed where a drive is counted only. */
  public static String explainLeavesOut() {
    return "This drive is counted only: tensioners, worn guides and a skimmed head are not weighed,"
        + " nor is a worn chain whose straight runs are not given. They need the drive's geometry;"
        + " until then they can only show as \"not on this list\".";
  }

  /** Where the plunger of a chain without geometry stands: nobody knows. */
  public static String extensionNotKnown(Optional<String> tensioner) {
    return tensioner.isPresent()
        ? "%s: extension not known; it needs the shafts' places, the faces, the arm or shoe and its plunger."
            .formatted(
                tensioner.get().equals("tensioner") ? "Tensioner" : "Tensioner " + tensioner.get())
        : "No tensioner given: the slack side is the run that leaves the driving sprocket; how much"
            + " chain is slack there needs the shafts' places.";
  }

  /** A chain that has no path, so nothing to count. */
  public static String noWayRound() {
    return "As it is it finds NO WAY ROUND: there is nothing to count.";
  }

  /** When the paint meets the marks again. */
  public static String realign(ChainSolution solution) {
    return "The same links meet the same marks again only after "
        + solution.realignCrankTurns()
        + " turns of the crankshaft: once the engine has turned, paint on a link is no timing mark.";
  }

  /** How a shaft stands, in its own degrees and in the crankshaft's. */
  public static String timing(Drive drive, ShaftTiming timing) {
    boolean cam = drive.shaft(timing.shaft()).filter(s -> s.role() == Role.CAMSHAFT).isPresent();
    if (timing.lag() == Lag.RIGHT) {
      return timing.shaft() + ": right";
    }
    return "%s: %s %s degrees %s (%s crank degrees)"
        .formatted(
            timing.shaft(),
            Numbers.degrees(timing.shaftDegrees()),
            cam ? "cam" : "shaft",
            timing.lag() == Lag.ADVANCED ? "advanced" : "retarded",
            Numbers.degrees(timing.crankDegrees()));
  }

  /** A shaft whose place is not known in this state. */
  public static String untimed(String shaft) {
    return shaft + ": not known; what is missing is named below";
  }

  /** Two or more names as a person lists them. */
  public static String list(List<String> names, String last) {
    int end = names.size() - 1;
    return end < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, end)) + " " + last + " " + names.get(end);
  }

  /** The caution that stands under every answer meant for work on an engine. */
  public static String caution() {
    return "For practice and cross-checking. The maker's procedure and a qualified hand decide;"
        + " turn an engine by hand before it is cranked.";
  }
}
