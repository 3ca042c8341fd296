package tightside.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The words by which a file names what the code names in capitals. */
final class Terms {

  private Terms() {}

  static String of(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static List<String> of(Enum<?>[] values) {
    List<String> terms = new ArrayList<>();
    for (Enum<?> value : values) {
      terms.add(of(value));
    }
    return terms;
  }
}
