package tightside.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Names;
import tightside.drive.Texts;
import tightside.files.Node.Scalar.Kind;

/** Reads names, texts and words to choose from. No value gives no word. */
final class Words {

  private Words() {}

  static Optional<String> name(Optional<Value> value) {
    Optional<String> text = text(value);
    if (text.isPresent() && !Names.FORM.matcher(text.get()).matches()) {
      return refused(value.get(), Fault.NAME_UNFIT, Map.of("kind", value.get().what()));
    }
    return text;
  }

  static Optional<String> title(Optional<Value> value) {
    Optional<String> text = text(value);
    if (text.isPresent() && !Texts.title(text.get())) {
      return refused(value.get(), Fault.TITLE_UNFIT, Map.of("most", Texts.TITLE_MOST));
    }
    return text;
  }

  static Optional<String> prose(Optional<Value> value) {
    Optional<String> text = text(value);
    if (text.isPresent() && !Texts.prose(text.get())) {
      return refused(value.get(), Fault.PROSE_UNFIT, Map.of("most", Texts.PROSE_MOST));
    }
    return text;
  }

  /** Yes or no, as YAML writes it: true or false. */
  static Optional<Boolean> yesOrNo(Optional<Value> value) {
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get().node() instanceof Node.Scalar scalar && scalar.kind() != Kind.TEXT) {
      if (scalar.text().equals("true") || scalar.text().equals("false")) {
        return Optional.of(scalar.text().equals("true"));
      }
    }
    value.get().complain(Fault.NOT_TRUE_OR_FALSE);
    return Optional.empty();
  }

  /** One of a few words. */
  static <E extends Enum<E>> Optional<E> choice(Optional<Value> value, E[] values) {
    Optional<String> text = text(value);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    for (E candidate : values) {
      if (text.get().equals(Terms.of(candidate))) {
        return Optional.of(candidate);
      }
    }
    complainOfChoice(value.get(), text.get(), Terms.of(values));
    return Optional.empty();
  }

  private static void complainOfChoice(Value value, String word, List<String> known) {
    Optional<String> near = NearMiss.of(word, known);
    if (near.isPresent()) {
      value.complain(Fault.CHOICE_NEARLY, Map.of("near", near.get()));
    } else {
      value.complain(Fault.CHOICE_UNKNOWN, Map.of("known", known));
    }
  }

  /** Any text. */
  static Optional<String> text(Optional<Value> value) {
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (!(value.get().node() instanceof Node.Scalar scalar)) {
      return refused(value.get(), Fault.NOT_TEXT, Map.of());
    }
    if (scalar.kind() == Kind.TEXT) {
      return Optional.of(scalar.text());
    }
    boolean nothing = scalar.kind() == Kind.NOTHING;
    return refused(value.get(), nothing ? Fault.VALUE_MISSING : Fault.TEXT_UNQUOTED, Map.of());
  }

  private static Optional<String> refused(Value value, Fault fault, Map<String, Object> facts) {
    value.complain(fault, facts);
    return Optional.empty();
  }
}
