package tightside.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads model files of format 1.
 *
 * <p>All that is wrong is told at once, each with its line and column. What is left of doubt is
 * refused: nothing is guessed, mirrored or rounded into place.
 */
public final class ModelReader {

  private ModelReader() {}

  /** Reads a file. One that can't be had as text is a problem too, told at its first line. */
  public static ModelReading read(Path file) {
    Complaints complaints = new Complaints();
    try {
      return reading(decode(FileText.of(file), complaints), complaints);
    } catch (Unreadable e) {
      e.complain(complaints);
      return reading(Decoded.nothing(), complaints);
    }
  }

  /**
   * Reads the text of a model.
   *
   * @param yaml a byte order mark in front of it is skipped
   */
  public static ModelReading parse(String yaml) {
    Complaints complaints = new Complaints();
    return reading(parse(yaml, complaints), complaints);
  }

  static Decoded parse(String yaml, Complaints complaints) {
    try {
      return decode(FileText.trimmed(yaml), complaints);
    } catch (Unreadable e) {
      e.complain(complaints);
      return Decoded.nothing();
    }
  }

  private static Decoded decode(String yaml, Complaints complaints) throws Unreadable {
    return ModelDecoder.decode(TreeReader.read(yaml, complaints), complaints);
  }

  private static ModelReading reading(Decoded decoded, Complaints complaints) {
    List<Problem> problems = new ArrayList<>();
    for (Complaint complaint : complaints.sorted()) {
      problems.add(complaint.inWords());
    }
    return complaints.errors() == 0
        ? new ModelReading(decoded.model(), problems, Optional.empty())
        : new ModelReading(Optional.empty(), problems, decoded.unfinished());
  }
}
