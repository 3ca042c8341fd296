package tightside.files;

import java.nio.file.Path;
import java.util.Optional;
import tightside.record.ModelText;

/**
 * A model file, read, with all of its text as it stands.
 *
 * @param text none where the file can't be had as text
 */
public record ModelFile(ModelReading reading, Optional<ModelText> text) {

  public static ModelFile read(Path file) {
    try {
      String text = FileText.exact(file);
      String name = file.getFileName().toString();
      String place = file.toAbsolutePath().toString();
      return new ModelFile(ModelReader.parse(text), Optional.of(ModelText.of(name, place, text)));
    } catch (Unreadable e) {
      return new ModelFile(ModelReader.read(file), Optional.empty());
    }
  }
}
