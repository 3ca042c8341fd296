package tightside.window;

import java.nio.file.Path;
import tightside.files.ModelReader;
import tightside.session.Snapshot;

/** The demo drives, opened. */
final class Models {

  private Models() {}

  static Path file(String name) {
    return Path.of("models", name + ".yaml");
  }

  static Snapshot opened(String name) {
    return Snapshot.opened(
        ModelReader.read(file(name)).model().orElseThrow().drive(), name + ".yaml");
  }

  /** The same with what it says of its engine. */
  static Snapshot withEngine(String name) {
    return Opening.opened(ModelReader.read(file(name)).model().orElseThrow(), name + ".yaml");
  }
}
