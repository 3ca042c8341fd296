package tightside.files;

import java.util.List;
import java.util.Optional;

/** A piece of a YAML text that knows where it stands. */
sealed interface Node {

  Place at();

  /** Keys with values, in the order of the text; each key once. */
  record Section(Place at, List<Entry> entries) implements Node {
    public Section {
      entries = List.copyOf(entries);
    }

    Optional<Entry> entry(String key) {
      for (Entry entry : entries) {
        if (entry.key().equals(key)) {
          return Optional.of(entry);
        }
      }
      return Optional.empty();
    }
  }

  /**
   * A key and its value.
   *
   * @param at where the key stands
   */
  record Entry(String key, Place at, Node value) {}

  /** Values in a row. */
  record Row(Place at, List<Node> items) implements Node {
    public Row {
      items = List.copyOf(items);
    }
  }

  /** A single value, as written. */
  record Scalar(Place at, String text, Kind kind) implements Node {

    /** What YAML takes it for. */
    enum Kind {
      TEXT,
      NUMBER,
      TRUTH,
      NOTHING
    }
  }
}
