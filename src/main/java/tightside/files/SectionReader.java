package tightside.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tightside.drive.Limits;
import tightside.files.Node.Scalar.Kind;

/**
 * Reads one section key by key.
 *
 * <p>The keys that are asked for are the keys that are known: whatever else stands in the section
 * is complained of at the end.
 */
final class SectionReader {

  private final Value value;
  private final Node.Section section;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> missing = new LinkedHashSet<>();
  private final int errorsBefore;

  private SectionReader(Value value, Node.Section section, int errorsBefore) {
    this.value = value;
    this.section = section;
    this.errorsBefore = errorsBefore;
  }

  /** The section that a value is; a value that is none is complained of. */
  static Optional<SectionReader> of(Optional<Value> value) {
    return value.isPresent()
        ? of(value.get(), value.get().complaints().errors())
        : Optional.empty();
  }

  private static Optional<SectionReader> of(Value value, int errorsBefore) {
    if (value.node() instanceof Node.Section section) {
      return Optional.of(new SectionReader(value, section, errorsBefore));
    }
    boolean nothing = value.node() instanceof Node.Scalar s && s.kind() == Kind.NOTHING;
    value.complain(nothing ? Fault.VALUE_MISSING : Fault.NOT_A_SECTION);
    return Optional.empty();
  }

  /**
   * The sections of a section whose keys are names. One with an unfit name is not sound.
   *
   * @param kind what they are names of
   */
  static List<SectionReader> named(Optional<Value> value, String kind, Limits many) {
    Optional<SectionReader> all = of(value);
    if (all.isEmpty()) {
      return List.of();
    }
    int count = all.get().section.entries().size();
    if (count > many.most()) {
      value.get().complainOfCount(count, many);
      return List.of();
    }
    List<SectionReader> sections = new ArrayList<>();
    Complaints complaints = value.get().complaints();
    for (Node.Entry entry : all.get().section.entries()) {
      int before = complaints.errors();
      Node.Scalar key = new Node.Scalar(entry.at(), entry.key(), Kind.TEXT);
      Words.name(Optional.of(new Value(key, kind, entry.at(), complaints)));
      Optional<SectionReader> section =
          of(new Value(entry.value(), entry.key(), entry.at(), complaints), before);
      if (section.isPresent()) {
        sections.add(section.get());
      }
    }
    return sections;
  }

  /** The key under which this section stands. */
  String name() {
    return value.what();
  }

  /** The same section under a name that says what it is. */
  SectionReader called(String name) {
    Value named = new Value(section, name, value.heading(), value.complaints());
    return new SectionReader(named, section, errorsBefore);
  }

  List<String> keys() {
    List<String> keys = new ArrayList<>();
    for (Node.Entry entry : section.entries()) {
      keys.add(entry.key());
    }
    return keys;
  }

  /** What a key that must be there says. */
  Optional<Value> need(String key) {
    Optional<Value> found = may(key);
    if (found.isEmpty()) {
      missing.add(key);
    }
    return found;
  }

  /** What a key that may be left out says. */
  Optional<Value> may(String key) {
    asked.add(key);
    Optional<Node.Entry> entry = section.entry(key);
    return entry.isPresent()
        ? Optional.of(new Value(entry.get().value(), key, entry.get().at(), value.complaints()))
        : Optional.empty();
  }

  /** What stands under a key, for those who have to know before it is its turn to be read. */
  Optional<Node> peek(String key) {
    return section.entry(key).map(Node.Entry::value);
  }

  /** How many errors the whole text has so far. */
  int errors() {
    return value.complaints().errors();
  }

  /** Says that something is wrong with the section as a whole. */
  void complain(Fault fault, Map<String, Object> facts) {
    value.complaints().add(value.heading(), fault, facts);
  }

  /**
   * Whether all of the section could be read; to be asked when all keys have been. A key that is
   * missing because it is misspelt is told of once.
   */
  boolean sound() {
    List<String> unused = new ArrayList<>(asked);
    unused.removeAll(keysAmong(asked));
    for (Node.Entry entry : section.entries()) {
      if (!asked.contains(entry.key())) {
        complainOfKey(entry, unused);
      }
    }
    for (String key : missing) {
      complain(Fault.KEY_MISSING, Map.of("key", key, "section", value.label()));
    }
    return value.complaints().errors() == errorsBefore;
  }

  private List<String> keysAmong(Set<String> some) {
    List<String> found = new ArrayList<>();
    for (Node.Entry entry : section.entries()) {
      if (some.contains(entry.key())) {
        found.add(entry.key());
      }
    }
    return found;
  }

  private void complainOfKey(Node.Entry entry, List<String> unused) {
    String key = entry.key();
    Optional<String> near = NearMiss.of(key, unused);
    if (near.isPresent()) {
      missing.remove(near.get());
      value.complaints().add(entry.at(), Fault.KEY_NEARLY, Map.of("key", key, "near", near.get()));
    } else {
      Map<String, Object> facts =
          Map.of("key", key, "section", value.label(), "known", List.copyOf(asked));
      value.complaints().add(entry.at(), Fault.KEY_UNKNOWN, facts);
    }
  }
}
