package tightside.validation;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * One row of a table in the folder {@code validation}, its cells found by the name of their column.
 */
public record Row(CSVRecord cells) {

  /** The folder of the tables; tests run in the project's own. */
  public static final Path FOLDER = Path.of("validation");

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  /** All rows of a table, such as {@code published/f4.csv}. */
  public static List<Row> of(String table) {
    try (Reader reader = Files.newBufferedReader(FOLDER.resolve(table), StandardCharsets.UTF_8);
        CSVParser parser = FORMAT.parse(reader)) {
      return parser.stream().map(Row::new).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public String text(String column) {
    return cells.get(column);
  }

  public boolean has(String column) {
    return !text(column).isEmpty();
  }

  public double number(String column) {
    return Double.parseDouble(text(column));
  }

  public int whole(String column) {
    return Integer.parseInt(text(column));
  }

  /** Numbers that share a cell, with a space between them. */
  public double[] numbers(String column) {
    return List.of(text(column).split(" ")).stream().mapToDouble(Double::parseDouble).toArray();
  }

  public Printed printed(String column) {
    return Printed.of(text(column));
  }

  /** Millimetres in the unit that the row's column {@code unit} names. */
  public double unitMm() {
    return switch (text("unit")) {
      case "mm" -> 1;
      case "in" -> 25.4;
      default -> throw new IllegalArgumentException("a unit that no row has: " + text("unit"));
    };
  }

  /** The first cell, and where the row comes from. */
  @Override
  public String toString() {
    return cells.get(0) + ", " + text("page");
  }
}
