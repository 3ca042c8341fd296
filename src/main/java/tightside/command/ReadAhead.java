package tightside.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import tightside.files.ModelReader;
import tightside.files.ModelReading;

/**
 * The model file, read on the second core while the words are still being understood: from a cold
 * start both take about as long.
 *
 * @param word the word that names the file
 */
record ReadAhead(String word, CompletableFuture<ModelReading> reading) {

  /** Begins to read what seems to be the file: the word after the verb, unless it is an option. */
  static Optional<ReadAhead> of(String[] words) {
    if (words.length < 2 || words[1].startsWith("-")) {
      return Optional.empty();
    }
    String word = words[1];
    return Optional.of(
        new ReadAhead(word, CompletableFuture.supplyAsync(() -> ModelReader.read(Path.of(word)))));
  }

  /** What the file holds: as read ahead if it is the one wanted, or else read now. */
  static ModelReading read(Optional<ReadAhead> ahead, Path wanted) {
    return ahead.isPresent() && ahead.get().word().equals(wanted.toString())
        ? ahead.get().reading().join()
        : ModelReader.read(wanted);
  }
}
