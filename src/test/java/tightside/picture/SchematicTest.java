package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Routing;
import tightside.drive.Shaft;
import tightside.timing.Counted;
import tightside.timing.RandomDrives;
import tightside.timing.Solver;
import tightside.timing.State;

/** The stand-in for a drive of which no place is known can be drawn, and says what it is. */
class SchematicTest {

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyChainFindsItsWayAndShaftsStandApart(long seed) {
    Drive placed = Schematic.placed(Counted.only(RandomDrives.of(seed)));
    for (Chain chain : placed.chains()) {
      assertThat(Routing.of(placed.inPlace(chain), Schematic.PITCH_MM, 0))
          .isInstanceOf(Routing.Routed.class);
    }
    List<Shaft> shafts = placed.shafts();
    for (int i = 0; i < shafts.size(); i++) {
      for (int j = 0; j < i; j++) {
        double room = radius(placed, shafts.get(i)) + radius(placed, shafts.get(j));
        assertThat(shafts.get(i).at().distance(shafts.get(j).at())).isGreaterThan(room);
      }
    }
  }

  private static double radius(Drive drive, Shaft shaft) {
    return drive.chainsOn(shaft.name()).stream()
            .mapToDouble(c -> c.sprocketOn(shaft.name()).orElseThrow().teeth())
            .max()
            .orElse(0)
        * Schematic.PITCH_MM
        / (2 * Math.PI);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void thePictureSaysThatItIsNotToScale(long seed) {
    Drive counted = Counted.only(RandomDrives.of(seed));
    Picture picture =
        DrivePicture.of(
            Solver.solve(counted, State.reference().turnedTo(77, State.Arrived.FORWARD)),
            PictureOptions.labelled(java.util.Optional.empty(), 1));
    assertThat(picture.description()).startsWith("Schematic: not to scale");
    assertThat(picture.shapes())
        .anyMatch(
            s -> s instanceof Shape.Text t && t.words().startsWith("Schematic: not to scale"));
    assertThat(picture.shapes()).noneMatch(s -> s.tag().ink() == Ink.NO_CHAIN);
    assertThat(picture.shapes()).anyMatch(s -> s.tag().ink() == Ink.SLACK);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aDriveWithPlacesIsItself(long seed) {
    Drive drive = RandomDrives.of(seed);
    assertThat(Schematic.placed(drive)).isSameAs(drive);
  }
}
