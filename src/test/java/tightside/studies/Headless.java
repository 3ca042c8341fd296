package tightside.studies;

import java.nio.file.Path;
import java.util.OptionalDouble;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.job.Job;
import tightside.session.SlackSetup;
import tightside.session.Snapshot;

/** A screen in memory, and the demo drives to show on it. */
final class Headless {

  private Headless() {}

  /** To be called before the toolkit starts. */
  static void screen(int width, int height) {
    System.setProperty("glass.platform", "Monocle");
    System.setProperty("monocle.platform", "Headless");
    System.setProperty("headless.geometry", width + "x" + height + "-32");
    System.setProperty("prism.order", "sw");
    System.setProperty("java.awt.headless", "true");
  }

  static Snapshot opened(String name) {
    Path file = Path.of("models", name + ".yaml");
    Model model = ModelReader.read(file).model().orElseThrow();
    OptionalDouble play =
        model.job().map(Job::lockingToolPlayDegrees).orElse(OptionalDouble.empty());
    Snapshot opened =
        Snapshot.opened(
            model.adjusted().drive(),
            file.getFileName().toString(),
            SlackSetup.of(play, model.engine(), model.phasers()));
    return model.measured().map(m -> opened.measured(m.adjustment())).orElse(opened);
  }
}
