package tightside.print;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** In what a page can be written. */
public enum Form {
  PDF(".pdf"),
  HTML(".html");

  private final String ending;

  Form(String ending) {
    this.ending = ending;
  }

  /** By how the name of a file ends; nothing where it ends otherwise. */
  public static Optional<Form> of(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    for (Form form : values()) {
      if (name.endsWith(form.ending)) {
        return Optional.of(form);
      }
    }
    return Optional.empty();
  }

  /** A page of HTML in this form. */
  public byte[] bytes(String html) {
    return this == PDF ? Pdf.of(html) : html.getBytes(StandardCharsets.UTF_8);
  }
}
