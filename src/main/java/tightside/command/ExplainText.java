package tightside.command;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Drive;
import tightside.reasoning.Group;
import tightside.reasoning.NextCheck;
import tightside.reasoning.Weighed;
import tightside.words.CheckWords;
import tightside.words.ExplainWords;
import tightside.words.ReadingSentences;
import tightside.words.Sentences;
import tightside.words.WhyWords;

/** The answer of {@code explain} for people. */
final class ExplainText {

  private static final int CHECKS = 4;

  private ExplainText() {}

  static List<String> of(Drive drive, tightside.reasoning.Answer answer) {
    List<String> lines = new ArrayList<>(List.of(drive.name()));
    drive.about().strip().lines().forEach(lines::add);
    lines.add("");
    lines.addAll(ExplainWords.verdict(answer));
    lines.add(ExplainWords.stability(answer.stability()));
    ExplainWords.jumpCaution(answer).ifPresent(lines::add);
    lines.add("");
    lines.add("What could explain these readings:");
    double rest = 0;
    List<Group> shown = WhyWords.shown(answer);
    for (Group group : answer.groups()) {
      if (shown.contains(group)) {
        addGroup(lines, group);
      } else {
        rest += group.probability();
      }
    }
    if (rest > 0) {
      lines.add("  %9s  everything else together".formatted(ExplainWords.percent(rest)));
    }
    lines.add("");
    lines.add("What was read:");
    ReadingSentences.numbered(drive, answer.evidence()).forEach(line -> lines.add("  " + line));
    lines.add("");
    lines.add("Why, for what is in front:");
    WhyWords.sums(answer).forEach(line -> lines.add("  " + line + "."));
    lines.add(WhyWords.spreads(drive, answer.evidence()));
    lines.add("");
    addChecks(lines, answer.checks());
    lines.add(ExplainWords.leftOut());
    if (drive.countedOnly()) {
      lines.add(Sentences.explainLeavesOut());
    }
    lines.add(Sentences.caution());
    return lines;
  }

  private static void addGroup(List<String> lines, Group group) {
    List<Weighed> likely = WhyWords.members(group);
    String percent = "  %9s  ".formatted(ExplainWords.percent(group.probability()));
    for (int i = 0; i < likely.size(); i++) {
      String before = i == 0 ? percent : " ".repeat(11) + "  or alike: ";
      lines.add(before + ExplainWords.clauseWithAmount(likely.get(i)) + ".");
    }
  }

  private static void addChecks(List<String> lines, List<NextCheck> checks) {
    List<NextCheck> worth = checks.stream().filter(c -> c.bits() > CheckWords.WORTH_BITS).toList();
    if (worth.isEmpty()) {
      lines.add(CheckWords.nothingWorth());
      lines.add("");
      return;
    }
    NextCheck first = worth.get(0);
    lines.add("Next: " + CheckWords.doIt(first) + " (" + CheckWords.cost(first) + ").");
    first.expects().forEach(e -> lines.add("    " + CheckWords.expect(e)));
    for (NextCheck check : worth.subList(1, Math.min(CHECKS, worth.size()))) {
      lines.add(
          "Then: "
              + CheckWords.doIt(check)
              + " ("
              + CheckWords.cost(check)
              + ")"
              + (check.held() ? ", but only once the engine has been turned by hand." : "."));
    }
    lines.add("");
  }
}
