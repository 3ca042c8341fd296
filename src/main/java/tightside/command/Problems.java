package tightside.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import tightside.drive.Finding.Severity;
import tightside.files.ModelReading;
import tightside.files.Problem;

/** The problems of a model file, as lines for people and as lists for programs. */
final class Problems {

  private Problems() {}

  /** FILE:LINE:COLUMN: what is wrong, and what would be right. */
  static List<String> lines(Path file, ModelReading reading) {
    return reading.problems().stream().map(problem -> line(file, problem)).toList();
  }

  private static String line(Path file, Problem problem) {
    String warning = problem.severity() == Severity.WARNING ? "warning: " : "";
    return file
        + ":"
        + problem.line()
        + ":"
        + problem.column()
        + ": "
        + warning
        + problem.message();
  }

  static List<Map<String, Object>> json(ModelReading reading, Severity severity) {
    return reading.problems().stream()
        .filter(problem -> problem.severity() == severity)
        .map(
            problem ->
                Json.object(
                    "line", problem.line(),
                    "column", problem.column(),
                    "message", problem.message()))
        .toList();
  }
}
