package tightside.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Texts that tests read. */
final class Samples {

  private Samples() {}

  /** The answered example of the model format's description. */
  static String answered() {
    return text("/tightside/answered.yaml");
  }

  /** Two sprockets and a chain, no tensioner. */
  static String twoWheels() {
    return text("/tightside/files/two-wheels.yaml");
  }

  static String text(String resource) {
    try (InputStream in = Samples.class.getResourceAsStream(resource)) {
      return new String(
          Objects.requireNonNull(in, resource).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
