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
import tightside.reasoning.Subject;

/**
 * How often readings are explained rightly: known faults, drawn from the priors that the program
 * begins with, read with the spreads that it assumes, and then with others. The words are the
 * number of trials (2000) and models (all that there are).
 */
public final class Faults {

  private Faults() {}

  public static void main(String[] words) throws IOException {
    int trials = words.length > 0 ? Integer.parseInt(words[0]) : 2000;
    FaultStudy.Tally[] all =
        IntStream.range(0, FaultStudy.kinds())
            .mapToObj(k -> new FaultStudy.Tally())
            .toArray(FaultStudy.Tally[]::new);
    for (Path file : files(words)) {
      long start = System.nanoTime();
      Model model = ModelReader.read(file).model().orElseThrow();
      FaultStudy study =
          new FaultStudy(new Subject(model.drive(), model.phasers(), model.engine()));
      System.out.printf("%n%s: %d explanations%n", file.getFileName(), study.size());
      System.out.println(FaultStudy.Tally.head());
      List<FaultStudy.Tally> tallies =
          IntStream.range(0, FaultStudy.kinds())
              .parallel()
              .mapToObj(k -> study.run(k, trials, 20_261_126L))
              .toList();
      for (int k = 0; k < tallies.size(); k++) {
        System.out.println(tallies.get(k).line() + "  " + FaultStudy.kind(k));
        all[k].add(tallies.get(k));
      }
      System.out.printf("%.0f s%n", (System.nanoTime() - start) / 1e9);
    }
    System.out.printf("%nAll drives%n%s%n", FaultStudy.Tally.head());
    for (int k = 0; k < all.length; k++) {
      System.out.println(all[k].line() + "  " + FaultStudy.kind(k));
    }
  }

  private static List<Path> files(String[] words) throws IOException {
    if (words.length > 1) {
      return Stream.of(words).skip(1).map(Path::of).toList();
    }
    try (Stream<Path> models = Files.list(Path.of("models"))) {
      return models.filter(p -> p.toString().endsWith(".yaml")).sorted().toList();
    }
  }
}
