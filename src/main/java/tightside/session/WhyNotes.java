package tightside.session;

import java.util.HashMap;
import java.util.Map;

/**
 * What a person typed on the card Why, as it was typed, right or not.
 *
 * @param typed by the name of the field; a field that is empty is left out
 */
public record WhyNotes(Map<String, String> typed) {

  public WhyNotes {
    typed = Map.copyOf(typed);
  }

  public static WhyNotes none() {
    return new WhyNotes(Map.of());
  }

  public String of(String field) {
    return typed.getOrDefault(field, "");
  }

  WhyNotes with(String field, String text) {
    Map<String, String> changed = new HashMap<>(typed);
    if (text.isBlank()) {
      changed.remove(field);
    } else {
      changed.put(field, text);
    }
    return new WhyNotes(changed);
  }
}
