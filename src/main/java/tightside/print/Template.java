package tightside.print;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Pages with places to be filled in; whatever is filled in is escaped. */
final class Template {

  private static final Mustache.Compiler COMPILER =
      Mustache.compiler().emptyStringIsFalse(true).withEscaper(Letters::escaped);

  private Template() {}

  static String fill(String name, Map<String, Object> facts) {
    return COMPILER.compile(text(name)).execute(facts);
  }

  static String text(String name) {
    try (InputStream in = Template.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
