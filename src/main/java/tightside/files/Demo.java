package tightside.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The demo drives; the first is shown before a person has one of their own. */
public final class Demo {

  private static final String FIRST = "two-cams-arm";

  private Demo() {}

  public static Model model() {
    return named(FIRST);
  }

  /** One of the demo drives, by the name of its file without its ending. */
  public static Model named(String name) {
    try (InputStream in = Demo.class.getResourceAsStream("/tightside/models/" + name + ".yaml")) {
      String yaml = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return ModelReader.parse(yaml).model().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
