package tightside.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tightside.reasoning.Amount;
import tightside.reasoning.Answer;
import tightside.reasoning.Cause;
import tightside.reasoning.Explanation;
import tightside.reasoning.Group;
import tightside.reasoning.Stability;
import tightside.reasoning.Weighed;

/** Explanations of readings in words. */
public final class ExplainWords {

  private ExplainWords() {}

  /** An explanation as a clause that can stand alone: "chain main is worn". */
  public static String clause(Explanation what) {
    return switch (what.cause()) {
      case NONE -> "nothing is wrong; what was read is spread";
      case STRETCH -> "chain " + chain(what) + " is worn";
      case RESEAT -> reseat(what);
      case PHASER -> phaser(what);
      case JOINT -> shaft(what) + " has turned in its sprocket (a slipped or sheared joint)";
      case SENSOR -> sensor(what);
      case TENSIONER -> "the tensioner of chain " + chain(what) + " does not keep it tight";
      case GUIDE -> "guide faces of chain " + chain(what) + " are worn";
      case CENTRE ->
          "the camshafts of chain "
              + chain(what)
              + " stand nearer to what drives them"
              + " (a skimmed head)";
      case OTHER -> "something that is not on this list";
      case SEVERAL ->
          "two things at once, most likely: "
              + what.parts().stream()
                  .map(ExplainWords::clause)
                  .collect(Collectors.joining("; and "));
    };
  }

  /** The same in a few words, for a narrow place. */
  public static String brief(Explanation what) {
    return switch (what.cause()) {
      case NONE -> "nothing wrong";
      case STRETCH -> "worn chain " + chain(what);
      case RESEAT -> "%s %+d".formatted(shaft(what), what.teeth()) + tooth(what.teeth());
      case PHASER -> "phaser " + shaft(what) + (driven(what) ? ", driven" : ", stuck");
      case JOINT -> "joint " + shaft(what);
      case SENSOR -> "sensor " + shaft(what) + (bent(what) ? ", bent" : ", turned");
      case TENSIONER -> "tensioner " + chain(what);
      case GUIDE -> "worn guides " + chain(what);
      case CENTRE -> "skimmed head, chain " + chain(what);
      case OTHER -> "not on this list";
      case SEVERAL ->
          what.parts().stream().map(ExplainWords::brief).collect(Collectors.joining(" + "));
    };
  }

  private static String tooth(int teeth) {
    return Math.abs(teeth) == 1 ? " tooth" : " teeth";
  }

  private static String reseat(Explanation what) {
    int by = Math.abs(what.teeth());
    return "the sprocket of %s sits %s %s on chain %s"
        .formatted(shaft(what), by + tooth(by), what.teeth() > 0 ? "ahead" : "behind", chain(what));
  }

  private static boolean driven(Explanation what) {
    return what.manner().equals(Optional.of(Explanation.Manner.DRIVEN));
  }

  private static boolean bent(Explanation what) {
    return what.manner().equals(Optional.of(Explanation.Manner.BENT));
  }

  private static String phaser(Explanation what) {
    return "the phaser of "
        + shaft(what)
        + (driven(what)
            ? " is driven off its rest (oil, its valve or its wiring)"
            : " is stuck off its rest");
  }

  private static String sensor(Explanation what) {
    return "the sensor or wheel of "
        + shaft(what)
        + (bent(what) ? " is bent or runs out" : " sits turned")
        + ", no shaft does";
  }

  private static String chain(Explanation what) {
    return what.chain().orElseThrow();
  }

  private static String shaft(Explanation what) {
    return what.shaft().orElseThrow();
  }

  /** An amount with where nine in ten of the belief lie. */
  public static String amount(Amount amount) {
    return switch (amount.unit()) {
      case PERCENT ->
          "by %s %% (%s to %s)"
              .formatted(
                  Numbers.fixed(amount.mean(), 2),
                  Numbers.fixed(amount.low(), 2),
                  Numbers.fixed(amount.high(), 2));
      case CRANK_DEGREES ->
          "by %s crank degrees (%s to %s)"
              .formatted(signed(amount.mean()), signed(amount.low()), signed(amount.high()));
      case MM ->
          "by %s mm (%s to %s)"
              .formatted(
                  Numbers.fixed(amount.mean(), 1),
                  Numbers.fixed(amount.low(), 1),
                  Numbers.fixed(amount.high(), 1));
      case NOTHING -> "";
    };
  }

  /** One decimal with its sign. */
  public static String signed(double value) {
    String shown = Numbers.fixed(value, 1);
    return shown.startsWith("-") || shown.equals("0.0") ? shown : "+" + shown;
  }

  /** A probability with the digits that it deserves. */
  public static String percent(double probability) {
    double percent = 100 * probability;
    if (percent >= 99.5) {
      return "over 99 %";
    }
    return percent < 0.5 ? "under 1 %" : Numbers.fixed(percent, 0) + " %";
  }

  /** What is found, in one or two sentences. */
  public static List<String> verdict(Answer answer) {
    Group leader = answer.leader();
    List<String> lines = new ArrayList<>();
    String found = percent(leader.probability());
    if (!answer.tellsApart()) {
      return List.of(
          "What was read tells hardly anything apart: most explanations read alike by it.");
    }
    if (answer.decided()) {
      lines.add("Most likely (%s): %s.".formatted(found, names(leader)));
    } else {
      lines.add(
          "Undecided. In front, with %s: %s. But %s."
              .formatted(found, names(leader), overturned(answer)));
    }
    if (several(leader)) {
      lines.add("Nothing that was read tells these apart, so they share that figure.");
    }
    return lines;
  }

  /** One explanation in full, several in a few words each. */
  private static String names(Group group) {
    return several(group)
        ? likely(group).stream().map(m -> brief(m.what())).collect(Collectors.joining("; or "))
        : clauses(group);
  }

  private static boolean several(Group group) {
    return likely(group).size() > 1;
  }

  /** The members that deserve a word beside the foremost. */
  public static List<Weighed> likely(Group group) {
    double least = group.probability() * 0.02;
    return group.members().stream().filter(m -> m.probability() >= least).toList();
  }

  /** What a group's members say, the foremost with its amount. */
  public static String clauses(Group group) {
    return likely(group).stream()
        .map(ExplainWords::clauseWithAmount)
        .collect(Collectors.joining("; or "));
  }

  /** An explanation with its amount. */
  public static String clauseWithAmount(Weighed weighed) {
    return clause(weighed.what()) + weighed.amount().map(a -> ", " + amount(a)).orElse("");
  }

  private static String overturned(Answer answer) {
    List<Stability.Trial> changed =
        answer.stability().trials().stream().filter(Stability.Trial::changed).toList();
    Stability.Trial first = changed.get(0);
    String more = changed.size() > 1 ? ", as do " + (changed.size() - 1) + " other changes" : "";
    return trial(first) + " puts first that " + clause(first.leading()) + more;
  }

  private static String trial(Stability.Trial trial) {
    boolean up = trial.times() > 1;
    if (trial.what().equals(Stability.SPREADS)) {
      return up ? "twice the spread" : "half the spread";
    }
    return (up ? "three times the prior weight of " : "a third of the prior weight of ")
        + Cause.of(trial.what()).map(ExplainWords::kind).orElse(trial.what());
  }

  /** A kind of cause, whichever part has it. */
  private static String kind(Cause cause) {
    return switch (cause) {
      case NONE -> "\"nothing is wrong\"";
      case STRETCH -> "a worn chain";
      case RESEAT -> "a sprocket on another tooth";
      case PHASER -> "a phaser off its rest";
      case JOINT -> "a slipped joint";
      case SENSOR -> "a turned or bent sensor or wheel";
      case TENSIONER -> "a tensioner that is out";
      case GUIDE -> "worn guide faces";
      case CENTRE -> "a skimmed head";
      case SEVERAL -> "two things at once";
      case OTHER -> "something not on this list";
    };
  }

  /** How far the answer moves. */
  public static String stability(Stability stability) {
    return "With any prior weight tripled or cut to a third, or all spreads doubled or halved, the answer in front keeps %s to %s."
        .formatted(percent(stability.least()), percent(stability.most()));
  }

  /** What has to be borne in mind where a sprocket may have jumped; nothing otherwise. */
  public static Optional<String> jumpCaution(Answer answer) {
    double jumped =
        answer.explanations().stream()
            .filter(w -> w.what().jumped())
            .mapToDouble(Weighed::probability)
            .sum();
    return jumped > 0.05
        ? Optional.of(
            "A SPROCKET MAY BE OFF ITS TOOTH. Do not crank or run this engine before it has been"
                + " turned two turns by hand and felt free; stop where it meets anything.")
        : Optional.empty();
  }

  /** What a line or a plane of two camshafts does not show. */
  public static String notDrawn() {
    return "Two things at once, and what is not on the list, can reach anywhere and force no line;"
        + " other readings, such as a plunger, are not in the picture but in the figures.";
  }

  /** A factor with the digits that it deserves. */
  public static String factor(double factor) {
    if (factor < 0.001) {
      return "under 0.001";
    }
    return factor < 0.1 ? Numbers.fixed(factor, 3) : Numbers.fixed(factor, factor < 10 ? 2 : 0);
  }

  /** What the answer leaves out. */
  public static String leftOut() {
    return "Priors and spreads are guesses until you set your own. "
        + Cause.values().length
        + " kinds of cause are weighed; what is not among them can only show as \"not on this list\".";
  }
}
