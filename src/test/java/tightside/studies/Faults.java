package tightside.studies;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.reasoning.FaultStudy;
import tightside.reasoning.FaultTally;
import tightside.reasoning.Subject;

/**
 * How often readings are explained rightly: known faults, drawn from the priors that the program
 * begins with, read with the spreads that it assumes, and then with others. The words are the
 * number of trials (2000) and models (all that there are); the word "matched" anywhere leaves out
 * the others.
 */
public final class Faults {

  private static final String MATCHED = "matched";

  private Faults() {}

  public static void main(String[] words) throws IOException {
    List<String> given = Stream.of(words).filter(w -> !w.equals(MATCHED)).toList();
    int kinds = given.size() < words.length ? 1 : FaultStudy.kinds();
    int trials = given.isEmpty() ? 2000 : Integer.parseInt(given.get(0));
    FaultTally[] all =
        IntStream.range(0, kinds).mapToObj(k -> new FaultTally()).toArray(FaultTally[]::new);
    for (Path file : files(given)) {
      long start = System.nanoTime();
      Model model = ModelReader.read(file).model().orElseThrow();
      FaultStudy study =
          new FaultStudy(new Subject(model.drive(), model.phasers(), model.engine()));
      System.out.printf("%n%s: %d explanations%n", file.getFileName(), study.size());
      System.out.println(FaultTally.head());
      List<FaultTally> tallies =
          IntStream.range(0, kinds)
              .parallel()
              .mapToObj(k -> study.run(k, trials, 20_261_126L))
              .toList();
      for (int k = 0; k < tallies.size(); k++) {
        System.out.println(tallies.get(k).line() + "  " + FaultStudy.kind(k));
        all[k].add(tallies.get(k));
      }
      System.out.println(
          "Clear as assumed, but not first (fault, its belief and rank; what is first; what was read):");
      tallies.get(0).misses().forEach(miss -> System.out.println("  " + miss));
      System.out.printf("%.0f s%n", (System.nanoTime() - start) / 1e9);
    }
    System.out.printf("%nAll drives%n%s%n", FaultTally.head());
    for (int k = 0; k < all.length; k++) {
      System.out.println(all[k].line() + "  " + FaultStudy.kind(k));
    }
  }

  private static List<Path> files(List<String> given) throws IOException {
    if (given.size() > 1) {
      return given.stream().skip(1).map(Path::of).toList();
    }
    try (Stream<Path> models = Files.list(Path.of("models"))) {
      return models.filter(p -> p.toString().endsWith(".yaml")).sorted().toList();
    }
  }
}
