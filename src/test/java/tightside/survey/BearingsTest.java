package tightside.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Drive;

/** An unknown that moves what would be read bears on it: each is moved, and everything read. */
class BearingsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "two-cams-arm",
        "one-cam-no-tensioner",
        "counterclockwise-balancers",
        "v-six-two-stages"
      })
  void noUnknownIsOverlooked(String name) {
    Drive drive = MeasuredDrives.model(name);
    List<Measurement> all = Measured.thorough(drive).exact();
    Unknowns unknowns = new Unknowns(drive);
    boolean[][] bear =
        Bearings.of(drive, unknowns, all, all.stream().map(m -> Facts.of(m)).toList());
    double[] at = unknowns.all().stream().mapToDouble(Unknown::start).toArray();
    Site still = unknowns.at(at);
    for (int j = 0; j < at.length; j++) {
      double[] moved = at.clone();
      moved[j] += 0.01;
      Site site = unknowns.at(moved);
      for (int i = 0; i < bear.length; i++) {
        double change = Facts.read(site, all.get(i)) - Facts.read(still, all.get(i));
        if (Math.abs(change) > 1e-9) {
          assertThat(bear[i][j]).as("%s bears on %s", unknowns.key(j), all.get(i)).isTrue();
        }
      }
    }
  }
}
