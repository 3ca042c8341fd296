package tightside.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
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
  private boolean sound = true;

  private SectionReader(Value value, Node.Section section) {
    this.value = value;
    this.section = section;
  }

  /** A decoder for sections. */
  static <T> Decoder<T> section(Function<SectionReader, Optional<T>> reading) {
    return value -> {
      if (value.node() instanceof Node.Section section) {
        return reading.apply(new SectionReader(value, section));
      }
      boolean nothing = value.node() instanceof Node.Scalar scalar && scalar.kind() == Kind.NOTHING;
      value.complain(nothing ? Fault.VALUE_MISSING : Fault.NOT_A_SECTION);
      return Optional.empty();
    };
  }

  /** A decoder for a section whose keys are names, each of a thing of the same kind. */
  static <T> Decoder<List<T>> named(String kind, Decoder<T> item) {
    return section(s -> s.everyNamed(kind, item));
  }

  boolean has(String key) {
    return section.entry(key).isPresent();
  }

  /** What a key that must be there says. */
  <T> Optional<T> need(String key, Decoder<T> decoder) {
    if (!has(key)) {
      asked.add(key);
      complain(Fault.KEY_MISSING, Map.of("key", key, "section", value.what()));
    }
    return may(key, decoder);
  }

  /** What a key that may be left out says; nothing if it is, or if it can't be read. */
  <T> Optional<T> may(String key, Decoder<T> decoder) {
    asked.add(key);
    Optional<Node.Entry> entry = section.entry(key);
    if (entry.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> read = decoder.decode(valueOf(entry.get()));
    sound &= read.isPresent();
    return read;
  }

  private Value valueOf(Node.Entry entry) {
    return new Value(entry.value(), entry.key(), entry.at(), value.complaints());
  }

  /** Says that something is wrong with the section as a whole. */
  void complain(Fault fault, Map<String, Object> facts) {
    sound = false;
    value.complaints().add(value.heading(), fault, facts);
  }

  /** Says that something is wrong with a key that is there. */
  void complainAt(String key, Fault fault, Map<String, Object> facts) {
    sound = false;
    asked.add(key);
    value.complaints().add(section.entry(key).orElseThrow().at(), fault, facts);
  }

  /** The key under which this section stands. */
  String what() {
    return value.what();
  }

  List<String> keys() {
    List<String> keys = new ArrayList<>();
    section.entries().forEach(entry -> keys.add(entry.key()));
    return keys;
  }

  /** The thing that the section says, if all of it could be read. */
  <T> Optional<T> built(Supplier<T> thing) {
    for (Node.Entry entry : section.entries()) {
      if (!asked.contains(entry.key())) {
        complainOfKey(entry.key());
      }
    }
    return sound ? Optional.of(thing.get()) : Optional.empty();
  }

  private void complainOfKey(String key) {
    List<String> unused = new ArrayList<>(asked);
    unused.removeIf(this::has);
    Optional<String> near = NearMiss.of(key, unused);
    sound = false;
    Place at = section.entry(key).orElseThrow().at();
    Map<String, Object> facts =
        near.<Map<String, Object>>map(n -> Map.of("key", key, "near", n))
            .orElseGet(
                () -> Map.of("key", key, "section", value.what(), "known", List.copyOf(asked)));
    value.complaints().add(at, near.isPresent() ? Fault.KEY_NEARLY : Fault.KEY_UNKNOWN, facts);
  }

  private <T> Optional<List<T>> everyNamed(String kind, Decoder<T> item) {
    List<T> things = new ArrayList<>();
    for (Node.Entry entry : section.entries()) {
      Place at = entry.at();
      Node.Scalar key = new Node.Scalar(at, entry.key(), Kind.TEXT);
      boolean named = Words.name().decode(new Value(key, kind, at, value.complaints())).isPresent();
      Optional<T> thing = item.decode(valueOf(entry));
      if (named && thing.isPresent()) {
        things.add(thing.get());
      }
    }
    return things.size() == section.entries().size() ? Optional.of(things) : Optional.empty();
  }
}
