package tightside.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.reasoning.Answer;
import tightside.reasoning.Cause;
import tightside.reasoning.Condition;
import tightside.reasoning.Evidence;
import tightside.reasoning.Explanation;
import tightside.reasoning.Foreseen;
import tightside.reasoning.Group;
import tightside.reasoning.Reading;
import tightside.reasoning.Weighed;

/** Where the figures of an answer come from, in words. */
public final class WhyWords {

  /** Groups below this are left out, but for those that always deserve a row. */
  public static final double SHOWN = 0.005;

  private static final int RIVALS = 2;

  private WhyWords() {}

  /**
   * The groups that are shown with their figures, the most probable first: those that matter, and
   * "nothing wrong", "two things at once" and "none of these" in any case.
   */
  public static List<Group> shown(Answer answer) {
    return answer.groups().stream()
        .filter(g -> g.probability() >= SHOWN || g.members().stream().anyMatch(WhyWords::always))
        .toList();
  }

  /** The members of a group that are shown. */
  public static List<Weighed> members(Group group) {
    List<Weighed> likely = group.probability() < SHOWN ? List.of() : ExplainWords.likely(group);
    return group.members().stream().filter(m -> likely.contains(m) || always(m)).toList();
  }

  private static boolean always(Weighed weighed) {
    Cause cause = weighed.what().cause();
    return cause == Cause.NONE || cause == Cause.SEVERAL || cause == Cause.OTHER;
  }

  /** An explanation in a few words, for a row of a table. */
  public static String brief(Explanation what) {
    String brief = ExplainWords.brief(what);
    return what.cause() == Cause.SEVERAL ? "two things at once, most likely " + brief : brief;
  }

  /** What a spread is, and what one tooth makes. */
  public static String spreads(Drive drive, Evidence evidence) {
    return teeth(drive)
        + "A spread is one standard deviation, in the unit of its reading: of many such readings"
        + " two in three stray by less, nineteen in twenty by less than two. To the spread of an"
        + " angle comes what all readings of one sensor share, "
        + degrees(evidence.spreads().factor() * evidence.spreads().sensorDegrees())
        + ".";
  }

  /** What one tooth is in crank degrees, camshafts that have it alike together. */
  private static String teeth(Drive drive) {
    Map<String, List<String>> shafts = new LinkedHashMap<>();
    for (Shaft shaft : drive.shafts()) {
      if (shaft.role() == Role.CAMSHAFT) {
        drive
            .gearing()
            .drivenBy(shaft.name())
            .flatMap(drive::chain)
            .flatMap(chain -> chain.sprocketOn(shaft.name()))
            .map(sprocket -> perTooth(drive, sprocket))
            .ifPresent(
                degrees ->
                    shafts.computeIfAbsent(degrees, d -> new ArrayList<>()).add(shaft.name()));
      }
    }
    StringBuilder words = new StringBuilder();
    shafts.forEach(
        (degrees, names) ->
            words.append("One tooth is %s on %s. ".formatted(degrees, String.join(", ", names))));
    return words.toString();
  }

  private static String perTooth(Drive drive, Sprocket sprocket) {
    double turns = 1 / drive.gearing().perCrankTurn(sprocket.shaft()).doubleValue();
    return Numbers.fixed(turns * 360 / sprocket.teeth(), 1) + " crank degrees";
  }

  static String degrees(double degrees) {
    String shown = Numbers.plain(degrees);
    return shown + (shown.equals("1") ? " crank degree" : " crank degrees");
  }

  /** What a factor is. */
  public static String factors() {
    return "Each reading multiplies the belief in an explanation by a factor: how probable the"
        + " explanation made that reading, over how probable all explanations together made it,"
        + " the readings before it in mind. It is large where the reading falls near to a narrow"
        + " expectation that the others do not share, near 1 where all expect much the same, and"
        + " small where the reading lies many spreads off.";
  }

  /** The sum of what is in front, a line for its prior and one for each reading. */
  public static List<String> sums(Answer answer) {
    Weighed first = answer.leader().first();
    List<String> lines = new ArrayList<>();
    lines.add(
        ExplainWords.clause(first.what())
            + ": met in "
            + Numbers.fixed(100 * first.prior(), 1)
            + " % before anything was read");
    for (int i = 0; i < first.factors().size(); i++) {
      Reading reading = answer.evidence().readings().get(i);
      String expected = first.foreseen().get(i).map(f -> ": " + expected(reading, f)).orElse("");
      expected += beside(answer, i);
      lines.add(
          "times %s for reading %d, %s%s"
              .formatted(
                  ExplainWords.factor(first.factors().get(i)), i + 1, name(reading), expected));
    }
    lines.add("that makes " + Numbers.fixed(100 * first.probability(), 1) + " %");
    return lines;
  }

  /** How the explanations that come next fare with a reading. */
  private static String beside(Answer answer, int reading) {
    String rivals =
        answer.groups().stream()
            .skip(1)
            .map(Group::first)
            .filter(w -> w.foreseen().get(reading).isPresent())
            .limit(RIVALS)
            .map(w -> ExplainWords.brief(w.what()) + ": " + briefly(w.foreseen().get(reading)))
            .collect(Collectors.joining("; "));
    return rivals.isEmpty() ? "" : " (" + rivals + ")";
  }

  /** What is read, in a word or two. */
  public static String name(Reading reading) {
    if (reading instanceof Reading.CamAngle a) {
      boolean usual = a.condition() == Condition.HOT_IDLE;
      return a.shaft()
          + (usual ? "" : ", " + a.condition().word().replace('-', ' '))
          + (a.learned() ? ", learned" : "");
    }
    if (reading instanceof Reading.CamEdges e) {
      return "edges of " + e.shaft();
    }
    if (reading instanceof Reading.ValveAngle v) {
      return "valves on " + v.shaft();
    }
    if (reading instanceof Reading.MarkStands m) {
      return "mark of " + m.shaft();
    }
    if (reading instanceof Reading.PlungerStands p) {
      return "plunger of " + p.chain();
    }
    if (reading instanceof Reading.Counted c) {
      return "links from " + c.from() + " to " + c.to();
    }
    if (reading instanceof Reading.Calliper c) {
      return "calliper on " + c.chain();
    }
    if (reading instanceof Reading.LockingTool t) {
      return "locking tool of " + t.shaft();
    }
    return reading instanceof Reading.Looked l ? "look at the " + l.at().word() : "compression";
  }

  /** What an explanation led one to expect of a reading, and how far off it lies. */
  public static String expected(Reading reading, Foreseen foreseen) {
    if (foreseen.chance().isPresent()) {
      return "it made that " + ExplainWords.percent(foreseen.chance().getAsDouble()) + " probable";
    }
    double expected = foreseen.expected().orElseThrow();
    String give = " give or take ";
    String words;
    if (reading instanceof Reading.PlungerStands) {
      words = Numbers.fixed(expected, 1) + give + Numbers.fixed(foreseen.spread(), 1) + " mm";
    } else if (reading instanceof Reading.Calliper) {
      words =
          "%s%s%s %% longer than new"
              .formatted(Numbers.fixed(expected, 2), give, Numbers.fixed(foreseen.spread(), 2));
    } else if (reading instanceof Reading.Compression) {
      words = Numbers.fixed(expected, 0) + give + Numbers.fixed(foreseen.spread(), 0) + " %";
    } else {
      words =
          ExplainWords.signed(expected)
              + give
              + Numbers.fixed(foreseen.spread(), 1)
              + " crank degrees";
    }
    return "it expected %s, and the reading lies %s off that"
        .formatted(words, spreads(foreseen.apart()));
  }

  private static String spreads(double apart) {
    return Numbers.fixed(apart, 1) + " spreads";
  }

  /** The same for a narrow place: how many spreads off, or how probable. */
  public static String briefly(Optional<Foreseen> foreseen) {
    return foreseen
        .map(
            f ->
                f.chance().isPresent()
                    ? ExplainWords.percent(f.chance().getAsDouble())
                    : Numbers.fixed(f.apart(), 1) + " off")
        .orElse("");
  }

  /** What stands below a factor. */
  public static String below() {
    return "Below each factor stands how far the reading lies from what the explanation led one to"
        + " expect, in spreads of that expectation, or how probable it made what was seen; for two"
        + " things at once, what the pair that is named led one to expect.";
  }
}
