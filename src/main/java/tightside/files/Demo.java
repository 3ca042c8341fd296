package tightside.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The drive that is shown before a person has one of their own. */
public final class Demo {

  static final String RESOURCE = "/tightside/models/two-cams-arm.yaml";

  private Demo() {}

  public static Model model() {
    try (InputStream in = Demo.class.getResourceAsStream(RESOURCE)) {
      String yaml = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return ModelReader.parse(yaml).model().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
