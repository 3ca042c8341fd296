package tightside.sheet;

import java.util.List;

/**
 * Something to do, to enter or to know.
 *
 * @param id stays the same for the same drive, access and job: words with / between them
 * @param text what to do, in one sentence
 * @param notes what to know for it, each a sentence
 */
public record Step(String id, String text, List<String> notes, Field field) {

  public Step {
    notes = List.copyOf(notes);
    if (id.isBlank() || text.isBlank()) {
      throw new IllegalArgumentException("a step has an id and says something");
    }
  }

  /** What an entry at this step says. */
  public Judgement judge(Entry entry) {
    return field.judge(entry);
  }
}
