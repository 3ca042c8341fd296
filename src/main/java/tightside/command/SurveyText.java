package tightside.command;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Drive;
import tightside.survey.Adjustment;
import tightside.survey.Checked;
import tightside.survey.SureCount;
import tightside.words.SurveyWords;

/** What was measured, as a technician reads it. */
final class SurveyText {

  private SurveyText() {}

  static List<String> title(Drive drive) {
    List<String> lines = new ArrayList<>(List.of(drive.name()));
    drive.about().strip().lines().forEach(lines::add);
    lines.add("");
    return lines;
  }

  /** An answer with the word that it rests on measurements, before its caution. */
  static List<String> added(List<String> answer, Adjustment a) {
    if (SurveyWords.notProved(a).isEmpty()) {
      return answer;
    }
    List<String> lines = new ArrayList<>(answer);
    lines.add(Math.max(0, lines.size() - 1), SurveyWords.notProved(a).get());
    return lines;
  }

  /** Every measurement and the tests. */
  static List<String> measurements(Adjustment a) {
    List<String> lines =
        new ArrayList<>(List.of("What was measured, and what all of it together says:"));
    for (Checked c : a.measurements()) {
      lines.add("  " + SurveyWords.measurement(c.measurement()) + ": " + SurveyWords.residual(c));
    }
    lines.add("");
    lines.add(SurveyWords.global(a.global()));
    lines.add(SurveyWords.suspect(a));
    SurveyWords.unchecked(a).ifPresent(lines::add);
    lines.add("");
    return lines;
  }

  /** How sure every count is, and what to measure next. */
  static List<String> counts(Adjustment a) {
    List<String> lines = new ArrayList<>(List.of("How sure the counts are by what was measured:"));
    for (SureCount c : a.counts()) {
      lines.add("  " + SurveyWords.sure(c));
    }
    SurveyWords.next(a).ifPresent(next -> lines.add("  " + next));
    lines.add("");
    return lines;
  }
}
