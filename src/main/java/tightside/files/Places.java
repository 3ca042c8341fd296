package tightside.files;

import java.util.Optional;
import tightside.drive.Part;

/** Finds the place in a text that says what is known of a part. */
final class Places {

  private Places() {}

  /**
   * The place of a part: of its value where that is a single one, of its key where a section or a
   * list stands under it. Where the text says nothing of the last steps, the place of what they
   * would belong to.
   */
  static Place of(Node root, Part part) {
    Node node = root;
    Place place = root.at();
    for (String step : part.steps()) {
      if (node instanceof Node.Row row) {
        node = row.items().get(Integer.parseInt(step));
        place = node.at();
        continue;
      }
      Optional<Node.Entry> entry =
          node instanceof Node.Section section ? section.entry(step) : Optional.empty();
      if (entry.isEmpty()) {
        return place;
      }
      node = entry.get().value();
      place = node instanceof Node.Scalar ? node.at() : entry.get().at();
    }
    return place;
  }
}
