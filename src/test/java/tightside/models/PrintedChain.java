package tightside.models;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A row of the table of chains in models/README.md.
 *
 * @param shafts from the driving sprocket round the loop and back to it
 * @param counts links of each strand, one fewer than the shafts
 * @param plungerMm how far the plunger stands out; nothing without a tensioner
 * @param slackMm with the plunger fully pushed back; nothing where the drive is counted only
 * @param runsOutPercent stretch at which the plunger is fully out
 */
record PrintedChain(
    String file,
    String chain,
    int links,
    List<String> shafts,
    List<Long> counts,
    OptionalDouble plungerMm,
    OptionalDouble travelMm,
    OptionalDouble slackMm,
    OptionalDouble runsOutPercent) {

  static final Path FOLDER = Path.of("models");

  private static final int CELLS = 8;

  /** Every row that begins with a file's name and has as many cells as the table of chains. */
  static List<PrintedChain> all() throws IOException {
    return rows().stream().filter(c -> c.size() == CELLS).map(PrintedChain::of).toList();
  }

  /** The cells of every row, of any table, that begins with a file's name. */
  static List<List<String>> rows() throws IOException {
    return Files.readAllLines(FOLDER.resolve("README.md")).stream()
        .filter(line -> line.startsWith("| `"))
        .map(line -> line.substring(1, line.lastIndexOf('|')).split("\\|"))
        .map(cells -> List.of(cells).stream().map(cell -> cell.replace("`", "").strip()).toList())
        .toList();
  }

  private static PrintedChain of(List<String> cells) {
    List<String> round = List.of(cells.get(3).split(" "));
    return new PrintedChain(
        cells.get(0),
        cells.get(1),
        Integer.parseInt(cells.get(2)),
        every(round, 0),
        every(round, 1).stream().map(Long::valueOf).toList(),
        number(cells.get(4)),
        number(cells.get(5)),
        number(cells.get(6)),
        number(cells.get(7)));
  }

  private static List<String> every(List<String> words, int odd) {
    return IntStream.range(0, words.size()).filter(i -> i % 2 == odd).mapToObj(words::get).toList();
  }

  private static OptionalDouble number(String cell) {
    return cell.equals("none") || cell.equals("not known")
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(cell));
  }

  @Override
  public String toString() {
    return file + " " + chain;
  }
}
