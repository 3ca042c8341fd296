package tightside.words;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tightside.timing.DowelRule;
import tightside.timing.HoldBack;
import tightside.timing.LooseStrand;
import tightside.timing.Reseating;
import tightside.timing.WrongLay;

/** What a held-back, locked chain lets happen, in sentences. */
public final class HoldBackWords {

  /** Less slack than this is not worth a word, mm: under what a thumb or an eye notices. */
  private static final double NOTHING_MM = 0.05;

  private HoldBackWords() {}

  /** Where the plunger is held and how much chain is over. */
  public static String slack(HoldBack hold) {
    String where =
        hold.chain().tensioner().isEmpty()
            ? "No tensioner, every shaft locked: "
            : hold.extensionMm() == 0
                ? "Plunger fully pushed back, every shaft locked: "
                : "Plunger held at " + Numbers.mm(hold.extensionMm()) + ", every shaft locked: ";
    return hold.slackMm() < 0
        ? where
            + Numbers.mm(-hold.slackMm())
            + " of chain is missing, so the plunger can't stand there; push it further back."
        : where + Numbers.mm(hold.slackMm()) + " of chain is left over in the whole loop.";
  }

  /** What one strand has. */
  public static String strand(LooseStrand loose) {
    String run = "from " + loose.strand().from() + " to " + loose.strand().to() + ": ";
    if (Math.abs(loose.slackMm()) < NOTHING_MM) {
      return run + "no slack";
    }
    String wear =
        Math.abs(loose.wearMm()) < NOTHING_MM
            ? ""
            : ", " + Numbers.mm(loose.wearMm()) + " of it wear and no mistake";
    return loose.slackMm() > 0
        ? run + Numbers.mm(loose.slackMm()) + " slack" + wear
        : run + Numbers.mm(-loose.slackMm()) + " too short" + wear;
  }

  /** A lay, sprocket by sprocket: intake 1 tooth behind and exhaust 2 teeth ahead. */
  public static String lay(HoldBack hold, Reseating lay) {
    List<String> each =
        hold.chain().sprockets().stream()
            .filter(s -> lay.teethAt(s.shaft()) != 0)
            .map(s -> s.shaft() + " " + teeth(lay.teethAt(s.shaft())))
            .toList();
    return Sentences.list(each, "and");
  }

  private static String teeth(int k) {
    return Math.abs(k) + (Math.abs(k) == 1 ? " tooth " : " teeth ") + (k > 0 ? "ahead" : "behind");
  }

  /** Whether a lay can come about, and what it would take. */
  public static String judged(HoldBack hold, WrongLay lay) {
    String what = lay(hold, lay.lay()) + ": ";
    if (lay.possible()) {
      return what + "POSSIBLE with every shaft locked.";
    }
    String missing =
        what
            + "not while locked, "
            + Numbers.mm(lay.missingMm())
            + " of chain is missing"
            + lay.lacking().map(s -> " from " + s.from() + " to " + s.to()).orElse("");
    return missing + "; " + turn(lay.turnNeededDegrees());
  }

  private static String turn(Map<String, Double> turns) {
    if (turns.isEmpty()) {
      return "no turn of its shaft makes it fit.";
    }
    return "it would fit with "
        + turns.entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(t -> t.getKey() + " turned by " + Numbers.fixed(t.getValue(), 1) + " degrees")
            .collect(Collectors.joining(" and "))
        + ".";
  }

  /** The rule for meeting a dowel. */
  public static String rule(DowelRule rule) {
    String limit = Numbers.fixed(rule.limitDegrees(), 1);
    String turned =
        "If "
            + rule.shaft()
            + " must be turned more than "
            + limit
            + " of its degrees to meet its dowel, it is on the wrong tooth";
    return rule.provesTheRightTooth()
        ? turned
            + ": the right tooth never asks for more than "
            + Numbers.fixed(rule.honestDegrees(), 1)
            + ", one tooth off asks for at least "
            + Numbers.fixed(rule.wrongFromDegrees(), 1)
            + "."
        : turned + "; but slack and play hide half a tooth here, so less turn proves nothing.";
  }
}
