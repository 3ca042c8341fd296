package tightside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.files.Model;
import tightside.reasoning.Amount;
import tightside.reasoning.Cause;
import tightside.reasoning.Explanation;
import tightside.reasoning.Foreseen;
import tightside.reasoning.Group;
import tightside.reasoning.NextCheck;
import tightside.reasoning.Stability;
import tightside.reasoning.Weighed;
import tightside.words.CheckWords;
import tightside.words.ExplainWords;
import tightside.words.Sentences;

/** The answer of {@code explain} for programs. */
final class ExplainJson {

  private ExplainJson() {}

  static Map<String, Object> of(Model model, tightside.reasoning.Answer answer) {
    return Json.object(
        "model", model.drive().name(),
        "decided", answer.decided(),
        "explanations", answer.explanations().stream().map(w -> explanation(answer, w)).toList(),
        "groups", answer.groups().stream().map(g -> group(answer, g)).toList(),
        "stability", stability(answer.stability()),
        "nextCheck", answer.checks().stream().findFirst().map(ExplainJson::check).orElse(null),
        "checks", answer.checks().stream().map(ExplainJson::check).toList(),
        "leftOut", leftOut(model));
  }

  private static Map<String, Object> group(tightside.reasoning.Answer answer, Group group) {
    return Json.object(
        "probability",
        group.probability(),
        "members",
        group.members().stream().map(m -> answer.explanations().indexOf(m)).toList(),
        "says",
        ExplainWords.clauses(group));
  }

  private static Map<String, Object> explanation(
      tightside.reasoning.Answer answer, Weighed weighed) {
    Map<String, Object> object = what(weighed.what(), weighed.amount());
    object.put("probability", weighed.probability());
    object.put("group", answer.groupOf(weighed));
    object.put("alike", answer.groups().get(answer.groupOf(weighed)).members().size() > 1);
    object.put("prior", weighed.prior());
    object.put("logEvidence", weighed.logEvidence());
    object.put("factors", weighed.factors());
    object.put(
        "foreseen",
        weighed.foreseen().stream().map(f -> f.map(ExplainJson::foreseen).orElse(null)).toList());
    object.put("amount", weighed.amount().map(ExplainJson::amount).orElse(null));
    object.put(
        "parts", weighed.what().parts().stream().map(p -> what(p, Optional.empty())).toList());
    return object;
  }

  private static Map<String, Object> what(Explanation what, Optional<Amount> amount) {
    return Json.object(
        "cause", what.cause().word(),
        "chain", what.chain().orElse(null),
        "shaft", what.shaft().orElse(null),
        "teeth", what.cause() == Cause.RESEAT ? (Integer) what.teeth() : null,
        "percent", what.cause() == Cause.STRETCH ? amount.map(Amount::mean).orElse(null) : null,
        "manner", what.manner().map(m -> m.name().toLowerCase(Locale.ROOT)).orElse(null));
  }

  private static Map<String, Object> foreseen(Foreseen foreseen) {
    boolean expected = foreseen.expected().isPresent();
    return Json.object(
        "expected",
        number(foreseen.expected()),
        "spread",
        expected ? (Double) foreseen.spread() : null,
        "spreadsOff",
        expected ? (Double) foreseen.apart() : null,
        "chance",
        number(foreseen.chance()));
  }

  /** What was not weighed, in sentences. */
  private static List<String> leftOut(Model model) {
    List<String> sentences = new ArrayList<>();
    if (model.drive().countedOnly()) {
      sentences.add(Sentences.explainLeavesOut());
    }
    sentences.add(ExplainWords.leftOut());
    return sentences;
  }

  private static Map<String, Object> amount(Amount amount) {
    return Json.object(
        "unit",
        switch (amount.unit()) {
          case PERCENT -> "percent";
          case MM -> "mm";
          default -> "crankDegrees";
        },
        "mean",
        amount.mean(),
        "low",
        amount.low(),
        "high",
        amount.high());
  }

  private static Map<String, Object> stability(Stability stability) {
    return Json.object(
        "undecided",
        stability.undecided(),
        "least",
        stability.least(),
        "most",
        stability.most(),
        "trials",
        stability.trials().stream()
            .map(
                t ->
                    Json.object(
                        "what", t.what(),
                        "times", t.times(),
                        "leader", t.leader(),
                        "leading", what(t.leading(), Optional.empty()),
                        "changed", t.changed()))
            .toList());
  }

  private static Map<String, Object> check(NextCheck check) {
    return Json.object(
        "check", check.kind().word(),
        "chain", check.chain().orElse(null),
        "shaft", check.shaft().orElse(null),
        "to", check.to().orElse(null),
        "says", CheckWords.doIt(check),
        "minutes", check.minutes(),
        "openingMinutes", check.openingMinutes(),
        "access", check.access().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        "bits", check.bits(),
        "bitsPerMinute", check.bitsPerMinute(),
        "held", check.held(),
        "expects", check.expects().stream().map(ExplainJson::expect).toList());
  }

  private static Map<String, Object> expect(NextCheck.Expect expect) {
    Map<String, Object> object = what(expect.what(), Optional.empty());
    object.put("low", number(expect.low()));
    object.put("high", number(expect.high()));
    object.put("chance", number(expect.probability()));
    object.put("says", CheckWords.outcome(expect));
    return object;
  }

  private static Double number(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }
}
