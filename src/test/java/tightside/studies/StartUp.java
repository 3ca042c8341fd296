package tightside.studies;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How long a verb works beyond the start of the virtual machine: the median of 20 runs of the jar
 * against as many of a program that does nothing. The machine should be idle. Asked for: under 300
 * ms.
 */
public final class StartUp {

  private static final int RUNS = 20;

  private StartUp() {}

  public static void main(String[] words) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    double nothing = median(List.of(java, "-cp", "target/test-classes", Nothing.class.getName()));
    System.out.printf("%-62s %4.0f ms%n", "a program that does nothing", nothing);
    for (String verb :
        List.of(
            "counts models/two-cams-arm.yaml",
            "counts models/two-cams-arm.yaml --json",
            "reseat models/two-cams-arm.yaml exhaust=-1",
            "stretch models/two-cams-arm.yaml 0.2",
            "check models/two-cams-arm.yaml",
            "picture models/two-cams-arm.yaml -o target/study.svg",
            "reseat models/v-six-two-stages.yaml left-intake=1")) {
      List<String> command = new ArrayList<>(List.of(java, "-jar", "target/tightside.jar"));
      command.addAll(Arrays.asList(verb.split(" ")));
      double all = median(command);
      System.out.printf("%-62s %4.0f ms, %4.0f ms beyond%n", verb, all, all - nothing);
    }
  }

  private static double median(List<String> command) throws IOException, InterruptedException {
    double[] ms = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long start = System.nanoTime();
      int code =
          new ProcessBuilder(command)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor();
      ms[i] = (System.nanoTime() - start) / 1e6;
      if (code != 0) {
        throw new IllegalStateException(command + " gave " + code);
      }
    }
    Arrays.sort(ms);
    return (ms[RUNS / 2 - 1] + ms[RUNS / 2]) / 2;
  }
}
