package tightside.files;

import java.util.Map;
import java.util.Optional;
import tightside.files.Node.Scalar.Kind;

/** The version of the format in which a file says that it is written. */
final class FormatVersion {

  static final String KEY = "tightside";

  private static final String READ = "1";

  private FormatVersion() {}

  /**
   * Complains of a version that is missing or nonsense.
   *
   * @throws Unreadable for one from the future: the rest of the file may mean anything
   */
  static void refuseOther(Node root, Complaints complaints) throws Unreadable {
    if (!(root instanceof Node.Section section)) {
      return;
    }
    Optional<Node.Entry> entry = section.entry(KEY);
    if (entry.isEmpty()) {
      complaints.add(root.at(), Fault.VERSION_MISSING, Map.of());
      return;
    }
    Node value = entry.get().value();
    boolean number = value instanceof Node.Scalar s && s.kind() == Kind.NUMBER;
    String text = number ? ((Node.Scalar) value).text() : "";
    if (text.equals(READ)) {
      return;
    }
    if (Numbers.plain(text) && text.indexOf('.') < 0 && Double.parseDouble(text) > 1) {
      throw new Unreadable(value.at(), Fault.VERSION_FUTURE, Map.of("version", text));
    }
    complaints.add(value.at(), Fault.VERSION_UNKNOWN, Map.of());
  }
}
