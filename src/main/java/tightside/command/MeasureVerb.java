package tightside.command;

import java.util.List;
import picocli.CommandLine.Command;
import tightside.files.Model;
import tightside.survey.Adjustment;
import tightside.survey.SureCount;

@Command(
    name = "measure",
    description = {
      "Adjusts the drive to what was measured on the engine: what each measurement is off by, which",
      "is probably wrong, how sure every count is, and what to measure next."
    })
final class MeasureVerb extends ModelVerb {

  @Override
  Answer answer(Model model) {
    if (model.measured().isEmpty()) {
      throw new Refusal(
          "nothing was measured on this drive; write what you measured under measurements: in the"
              + " model file");
    }
    Adjustment a = model.measured().get().adjustment();
    return new Answer(
        verdict(a),
        () ->
            Json.object(
                "model", model.drive().name(),
                "measurements", SurveyJson.measurements(a),
                "shafts", SurveyJson.shafts(a)),
        () -> lines(model, a));
  }

  private static int verdict(Adjustment a) {
    boolean wrong =
        a.suspect().isPresent()
            || !a.global().passed()
            || a.counts().stream().anyMatch(SureCount::contradicted);
    return wrong ? Answer.DRIVE_WRONG : Answer.ANSWERED;
  }

  private static List<String> lines(Model model, Adjustment a) {
    List<String> lines = SurveyText.title(model.drive());
    lines.addAll(SurveyText.measurements(a));
    lines.addAll(SurveyText.counts(a));
    lines.add(tightside.words.Sentences.caution());
    return lines;
  }
}
