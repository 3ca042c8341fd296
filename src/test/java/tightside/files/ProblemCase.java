package tightside.files;

import java.util.ArrayList;
import java.util.List;

/** A model that is wrong in one way, and what is to be told of it. */
record ProblemCase(
    String why, String text, Place at, String id, boolean alone, List<String> words) {

  /** The cases of {@code problems.txt}. */
  static List<ProblemCase> all() {
    List<ProblemCase> cases = new ArrayList<>();
    String base = Samples.answered();
    for (String line : Samples.text("/tightside/files/problems.txt").lines().toList()) {
      if (line.startsWith("@ ")) {
        base = Samples.text(line.substring(2));
      } else if (!line.isBlank() && !line.startsWith("#")) {
        cases.add(parse(base, line));
      }
    }
    return cases;
  }

  private static ProblemCase parse(String base, String line) {
    String[] cells = line.split(" \\| ", -1);
    if (cells.length != 6) {
      throw new IllegalArgumentException("six cells, not " + cells.length + ": " + line);
    }
    String[] place = cells[3].split(":");
    return new ProblemCase(
        cells[0],
        edited(base, plain(cells[1]), plain(cells[2])),
        new Place(Integer.parseInt(place[0]), Integer.parseInt(place[1])),
        cells[4].replace("+", ""),
        !cells[4].endsWith("+"),
        List.of(cells[5].split(" & ")));
  }

  private static String plain(String cell) {
    return cell.replace("\\\\", "\0")
        .replace("\\n", "\n")
        .replace("\\t", "\t")
        .replace("\\z", "\1")
        .replace("\0", "\\");
  }

  private static String edited(String base, String from, String to) {
    if (from.equals("*")) {
      return to;
    }
    int at = base.indexOf(from);
    if (at < 0 || base.indexOf(from, at + 1) >= 0) {
      throw new IllegalArgumentException("must stand in the text once: " + from);
    }
    return base.substring(0, at) + to + base.substring(at + from.length());
  }

  @Override
  public String toString() {
    return why;
  }
}
