package tightside.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Why a drive stands as it does.
 *
 * @param id of the lesson, whose own words come before the general ones
 */
record Explanation(String id, Truth truth, Map<String, String> facts) {

  List<Explained> parts() {
    List<Explained> parts = new ArrayList<>();
    for (Part part : Part.values()) {
      parts.add(new Explained(part, LessonTexts.fill(key(part), facts)));
    }
    return parts;
  }

  private String key(Part part) {
    String which = part.name().toLowerCase(Locale.ROOT);
    String own = id + "." + which;
    if (LessonTexts.find(own).isPresent()) {
      return own;
    }
    String kind =
        switch (truth.right().cause()) {
          case WRONG_TOOTH -> "tooth.";
          case WORN_CHAIN -> "worn.";
          default -> "nothing.";
        };
    return kind + which;
  }

  List<String> after() {
    List<String> lines = new ArrayList<>();
    for (int i = 1; LessonTexts.find(id + ".after." + i).isPresent(); i++) {
      lines.add(LessonTexts.fill(id + ".after." + i, facts));
    }
    return lines;
  }
}
