package tightside.session;

import tightside.survey.Adjustment;
import tightside.survey.Measurement;
import tightside.words.SurveyWords;

/** What a person does to the measurements of a drive. Each leads to a new snapshot. */
public final class SurveyEdits {

  private SurveyEdits() {}

  /** The drive adjusted to a survey that was changed. */
  public static Edit adjusted(Snapshot now, String name, Adjustment adjustment) {
    return Edit.single(name, now.measured(adjustment));
  }

  public static String measured(Measurement m) {
    return "Measure %s: %s"
        .formatted(SurveyWords.measurement(m), SurveyWords.value(m, m.reading().value()));
  }

  public static String removed(Measurement m) {
    return "Take back the measurement %s".formatted(SurveyWords.measurement(m));
  }
}
