package tightside.survey;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Drive;

/** Which unknowns an equation rests on, so that it need not be asked about the others. */
final class Bearings {

  private Bearings() {}

  /**
   * By equation: the unknowns that bear on it.
   *
   * @param equations those of the survey's measurements first, each in its place
   */
  static boolean[][] of(
      Drive drive, Unknowns unknowns, List<Measurement> measurements, List<Equation> equations) {
    boolean[][] bear = new boolean[equations.size()][unknowns.all().size()];
    for (int i = 0; i < bear.length; i++) {
      List<String> keys = i < measurements.size() ? keys(drive, measurements.get(i)) : List.of();
      for (int j = 0; j < bear[i].length; j++) {
        bear[i][j] = i >= measurements.size() || bears(unknowns.key(j), keys);
      }
    }
    return bear;
  }

  /** The unknowns' keys, or what they begin with if it ends in a dot or a space. */
  private static List<String> keys(Drive drive, Measurement m) {
    List<String> keys = new ArrayList<>();
    for (SurveyPoint point : m.points()) {
      if (point.spot() == Spot.CENTRE) {
        keys.add(point.part());
        keys.add(point.part() + " ");
      }
      point.faces(drive).forEach(f -> keys.add(f.chain() + "/" + point.part() + "."));
    }
    if (m instanceof Measurement.Mark mark) {
      keys.add(mark.chain() + "/" + mark.shaft());
    } else if (m instanceof Measurement.Pitches p) {
      keys.add(p.chain() + "/pitch");
    } else if (m instanceof Measurement.Extension e) {
      keys.add(e.chain() + "/extension");
    }
    return keys;
  }

  private static boolean bears(String unknown, List<String> keys) {
    for (String key : keys) {
      boolean open = key.endsWith(" ") || key.endsWith(".");
      if (open ? unknown.startsWith(key) : unknown.equals(key)) {
        return true;
      }
    }
    return false;
  }
}
