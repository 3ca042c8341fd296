package tightside.files;

import java.util.Objects;
import tightside.survey.Adjustment;
import tightside.survey.Survey;

/**
 * What was measured on an engine, and the adjustment that follows from it. Two are equal whose
 * surveys are: the adjustment is worked out, not written.
 */
public record MeasuredDrive(Survey survey, Adjustment adjustment) {

  @Override
  public boolean equals(Object other) {
    return other instanceof MeasuredDrive m && m.survey.equals(survey);
  }

  @Override
  public int hashCode() {
    return Objects.hash(survey);
  }
}
