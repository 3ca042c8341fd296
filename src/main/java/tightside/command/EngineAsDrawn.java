package tightside.command;

import tightside.engine.Engine;
import tightside.engine.TimedEngine;
import tightside.files.Model;
import tightside.picture.Picture;
import tightside.picture.ValvePicture;
import tightside.timing.Solution;

/** The engine of a model with its camshafts as a solution of its drive has them. */
final class EngineAsDrawn {

  private EngineAsDrawn() {}

  /**
   * @throws Refusal if the model says nothing of it
   */
  static Engine engine(Model model) {
    return model
        .engine()
        .orElseThrow(
            () ->
                new Refusal(
                    "the model says nothing of its engine; add a section \"engine\" with bore,"
                        + " stroke, rod, compression-ratio and valves"));
  }

  /** Its first cylinder where the crank stands, or where a valve is nearest if it is not turned. */
  static Picture picture(Model model, Solution solution) {
    Engine engine = engine(model);
    TimedEngine timed = TimedEngine.driven(engine, solution);
    double turned = solution.state().crankDegrees();
    double at =
        turned == 0
            ? ValvePicture.nearestDegrees(timed)
            : engine.atReferenceDegrees().orElse(0) + turned;
    return ValvePicture.of(solution.drive().name(), timed, Math.IEEEremainder(at, 720));
  }
}
