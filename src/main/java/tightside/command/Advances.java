package tightside.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tightside.drive.Drive;
import tightside.engine.Engine;
import tightside.words.Sentences;

/** What the words SHAFT=CRANKDEG mean for an engine. */
final class Advances {

  /** A whole turn of a camshaft is 720; past half of it nobody says so. */
  private static final double MOST_DEGREES = 360;

  private Advances() {}

  /**
   * Crank degrees by camshaft, positive = advanced.
   *
   * @throws Refusal if a word names no camshaft with valves, or no angle
   */
  static Map<String, Double> of(Drive drive, Engine engine, List<String> words) {
    Map<String, Double> advanced = new LinkedHashMap<>();
    for (String word : words) {
      int equals = word.lastIndexOf('=');
      if (equals < 1) {
        throw new Refusal(
            "\"%s\" advances no camshaft; write SHAFT=CRANKDEG, such as %s=-20"
                .formatted(word, engine.camshafts().get(0)));
      }
      String shaft = camshaft(drive, engine, word.substring(0, equals));
      if (advanced.put(shaft, degrees(word, word.substring(equals + 1))) != null) {
        throw new Refusal(shaft + " is advanced twice; name it once, with all its crank degrees");
      }
    }
    return advanced;
  }

  private static String camshaft(Drive drive, Engine engine, String name) {
    if (engine.camshafts().contains(name)) {
      return name;
    }
    String known = Sentences.list(engine.camshafts(), "and");
    throw new Refusal(
        (drive.shaft(name).isPresent()
                ? "the shaft \"%s\" opens no valve of this model; valves hang on %s"
                : "the drive has no shaft \"%s\"; valves hang on %s")
            .formatted(name, known));
  }

  private static double degrees(String word, String number) {
    if (number.matches("[+-]?\\d{1,6}(\\.\\d{1,15})?")) {
      double degrees = Double.parseDouble(number);
      if (Math.abs(degrees) <= MOST_DEGREES) {
        return degrees;
      }
    }
    throw new Refusal(
        "\"%s\" is no angle; write crank degrees with a decimal point, from -360 to 360, + for advanced"
            .formatted(word));
  }
}
