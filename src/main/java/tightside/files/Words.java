package tightside.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Names;
import tightside.drive.Texts;

/** Reads names, texts and words to choose from. */
final class Words {

  private Words() {}

  static Decoder<String> name() {
    return value -> {
      Optional<String> text = text(value);
      if (text.isPresent() && !Names.FORM.matcher(text.get()).matches()) {
        value.complain(Fault.NAME_UNFIT);
        return Optional.empty();
      }
      return text;
    };
  }

  static Decoder<String> title() {
    return value -> {
      Optional<String> text = text(value);
      if (text.isPresent() && !Texts.title(text.get())) {
        value.complain(Fault.TITLE_UNFIT, Map.of("most", Texts.TITLE_MOST));
        return Optional.empty();
      }
      return text;
    };
  }

  static Decoder<String> prose() {
    return value -> {
      Optional<String> text = text(value);
      if (text.isPresent() && !Texts.prose(text.get())) {
        value.complain(Fault.PROSE_UNFIT, Map.of("most", Texts.PROSE_MOST));
        return Optional.empty();
      }
      return text;
    };
  }

  /** One of a few words. */
  static <E extends Enum<E>> Decoder<E> choice(E[] values) {
    return value -> {
      Optional<String> text = text(value);
      for (E candidate : values) {
        if (text.isPresent() && text.get().equals(Terms.of(candidate))) {
          return Optional.of(candidate);
        }
      }
      text.ifPresent(word -> complainOfChoice(value, word, Terms.of(values)));
      return Optional.empty();
    };
  }

  private static void complainOfChoice(Value value, String word, List<String> known) {
    Optional<String> near = NearMiss.of(word, known);
    if (near.isPresent()) {
      value.complain(Fault.CHOICE_NEARLY, Map.of("near", near.get()));
    } else {
      value.complain(Fault.CHOICE_UNKNOWN, Map.of("known", known));
    }
  }

  private static Optional<String> text(Value value) {
    if (!(value.node() instanceof Node.Scalar scalar)) {
      value.complain(Fault.NOT_TEXT);
      return Optional.empty();
    }
    return switch (scalar.kind()) {
      case TEXT -> Optional.of(scalar.text());
      case NOTHING -> refused(value, Fault.VALUE_MISSING);
      case NUMBER, TRUTH -> refused(value, Fault.TEXT_UNQUOTED);
    };
  }

  private static Optional<String> refused(Value value, Fault fault) {
    value.complain(fault);
    return Optional.empty();
  }
}
