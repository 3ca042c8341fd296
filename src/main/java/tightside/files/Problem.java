package tightside.files;

import tightside.drive.Finding;

/**
 * Something wrong with a model file, or worth a look.
 *
 * @param line from 1
 * @param column from 1, counted in characters
 * @param message one sentence: what is wrong, and what would be right
 */
public record Problem(int line, int column, Finding.Severity severity, String message) {

  public boolean error() {
    return severity == Finding.Severity.ERROR;
  }
}
