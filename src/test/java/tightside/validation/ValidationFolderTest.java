package tightside.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The folder of validation tables is what its README says. */
class ValidationFolderTest {

  private static final Pattern NAMED = Pattern.compile("(published|calculated)/[a-z0-9-]+\\.csv");
  private static final Path TESTS = Path.of("src", "test", "java", "tightside", "validation");

  static List<String> tables() throws IOException {
    try (Stream<Path> files = Files.walk(Row.FOLDER)) {
      return files
          .filter(file -> file.toString().endsWith(".csv"))
          .map(file -> Row.FOLDER.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  private static Set<String> namedIn(String text) {
    return NAMED.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
  }

  @Test
  void readmeListsEveryTableAndNoOther() throws IOException {
    String readme = Files.readString(Row.FOLDER.resolve("README.md"));
    assertThat(namedIn(readme)).containsExactlyInAnyOrderElementsOf(tables());
  }

  @Test
  void testsReadEveryTable() throws IOException {
    StringBuilder sources = new StringBuilder();
    try (Stream<Path> files = Files.walk(TESTS)) {
      for (Path file : files.filter(f -> f.toString().endsWith("Test.java")).toList()) {
        sources.append(Files.readString(file));
      }
    }
    assertThat(namedIn(sources.toString())).containsExactlyInAnyOrderElementsOf(tables());
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyRowSaysWhereItComesFrom(String table) {
    boolean own = table.startsWith("calculated/");
    List<String> ways = List.of("read", "read once", "read in code", "from memory");
    assertThat(Row.of(table)).isNotEmpty();
    for (Row row : Row.of(table)) {
      assertThat(row.text("source")).as("source of %s", row).isNotBlank();
      assertThat(row.text("edition")).as("edition of %s", row).isNotBlank();
      assertThat(row.text("page")).as("page of %s", row).isNotBlank();
      assertThat(row.text("why")).as("why of %s", row).isNotNull();
      assertThat(row.text("come_by").split(" and "))
          .as("how %s was come by", row)
          .isSubsetOf(own ? List.of("own calculation") : ways);
    }
  }
}
