package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Drive;
import tightside.drive.Fitting;
import tightside.drive.Guide;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;

/** The path's own gradient against central differences of its length, at a fixed extension. */
class LengthGradientTest {

  private static final double STEP_MM = 1e-4;

  /**
   * mm per mm. Central differences err by step^2 times the third derivative of the length, which is
   * some 1 / (shortest run)^2, and by rounding of 1e-13 of 1e3 mm over the step: both about 1e-8.
   */
  private static final double TOLERANCE = 1e-6;

  static LongStream seeds() {
    return LongStream.range(0, 120);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void isWhatMovingASprocketOrAFaceDoesToTheLength(long seed) {
    Drive drive = RandomDrives.of(seed);
    for (Chain chain : drive.chains()) {
      OptionalDouble extension = extensionMm(drive, chain);
      TautPath path = path(drive, chain.name(), extension);
      for (int place = 0; place < chain.route().size(); place++) {
        Vector2D gradient = path.lengthGradient(place);
        for (Vector2D way : List.of(Vector2D.Unit.PLUS_X, Vector2D.Unit.PLUS_Y)) {
          Drive ahead = moved(drive, chain, place, way.multiply(STEP_MM));
          Drive back = moved(drive, chain, place, way.multiply(-STEP_MM));
          double grown =
              path(ahead, chain.name(), extension).lengthMm()
                  - path(back, chain.name(), extension).lengthMm();
          assertThat(gradient.dot(way))
              .as("place %s of %s, towards %s", place, chain.name(), way)
              .isCloseTo(grown / (2 * STEP_MM), within(TOLERANCE));
        }
      }
    }
  }

  private static OptionalDouble extensionMm(Drive drive, Chain chain) {
    return Fitting.fit(drive.inPlace(chain), chain.pitchMm(), OptionalDouble.empty())
            instanceof ChainFit.Solved solved
        ? solved.extensionMm()
        : OptionalDouble.empty();
  }

  /** Of the new chain with the plunger held. */
  private static TautPath path(Drive drive, String name, OptionalDouble extensionMm) {
    Chain chain = drive.chain(name).orElseThrow();
    return Fitting.fit(drive.inPlace(chain), chain.pitchMm(), extensionMm).path().orElseThrow();
  }

  private static Drive moved(Drive drive, Chain chain, int place, Vector2D by) {
    RouteEntry entry = chain.route().get(place);
    if (entry instanceof Sprocket sprocket) {
      List<Shaft> shafts =
          drive.shafts().stream()
              .map(
                  s ->
                      s.name().equals(sprocket.shaft())
                          ? new Shaft(s.name(), s.role(), s.at().add(by))
                          : s)
              .toList();
      return new Drive(drive.name(), "", drive.rotation(), shafts, drive.chains());
    }
    List<RouteEntry> route = new ArrayList<>(chain.route());
    route.set(place, moved(entry, by));
    List<Chain> chains =
        drive.chains().stream().map(c -> c.equals(chain) ? chain.withRoute(route) : c).toList();
    return new Drive(drive.name(), "", drive.rotation(), drive.shafts(), chains);
  }

  private static RouteEntry moved(RouteEntry entry, Vector2D by) {
    if (entry instanceof Guide g) {
      return new Guide(g.name(), g.contact(), g.curve().moved(by::add), g.seen());
    }
    if (entry instanceof Shoe s) {
      return new Shoe(s.name(), s.contact(), s.curve().moved(by::add), s.plunger(), s.seen());
    }
    Arm a = (Arm) entry;
    return new Arm(
        a.name(),
        a.contact(),
        a.pivot().add(by),
        a.curve().moved(by::add),
        a.pad().add(by),
        a.plunger(),
        a.seen());
  }
}
