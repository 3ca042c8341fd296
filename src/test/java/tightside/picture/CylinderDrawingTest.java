package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.engine.Clearance;
import tightside.engine.Engine;
import tightside.engine.LiftLaw;
import tightside.engine.Valve;

/** The cylinder that is cut open, measured as it is drawn. */
class CylinderDrawingTest {

  private static final Engine ENGINE =
      new Engine(
          80,
          88,
          140,
          11.5,
          List.of(
              new Valve("intake", 10.2, 250, 106, LiftLaw.POLYNOMIAL_345, 16, 1.9),
              new Valve("exhaust", 9.8, 248, -108, LiftLaw.POLYNOMIAL_345, -12, 1.5)));

  private static List<Clearance> valves(double advanced) {
    return ENGINE.valves().stream()
        .map(v -> new Clearance(ENGINE.crankGear(), v, advanced))
        .toList();
  }

  private static Stream<Bounds> of(List<Shape> shapes, Ink ink) {
    return shapes.stream().filter(s -> s.tag().ink() == ink).map(Shape::bounds);
  }

  /** Along the cylinder, from the lowest corner of each valve to the crown. */
  @ParameterizedTest
  @ValueSource(doubles = {-360, -110, -40, -6.6, 0, 3, 25, 108, 359})
  void theRoomThatIsDrawnIsTheRoomThereIs(double degrees) {
    List<Clearance> valves = valves(-20);
    List<Shape> shapes = CylinderDrawing.at(ENGINE, valves, degrees);
    double crown = of(shapes, Ink.PISTON).mapToDouble(Bounds::top).max().orElseThrow();
    List<Double> rooms = of(shapes, Ink.VALVE).map(valve -> valve.bottom() - crown).toList();
    for (int i = 0; i < 2; i++) {
      assertThat(rooms.get(i)).isCloseTo(valves.get(i).mmAt(degrees), within(1e-9));
    }
    long touching = valves.stream().filter(c -> c.mmAt(degrees) <= 1e-6).count();
    assertThat(of(shapes, Ink.TOUCH)).hasSize((int) touching);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 45, 90, 180, 270})
  void thePistonRunsItsStrokeAndAllIsInSight(double degrees) {
    List<Shape> shapes = CylinderDrawing.at(ENGINE, valves(0), degrees);
    double crown = of(shapes, Ink.PISTON).mapToDouble(Bounds::top).max().orElseThrow();
    double top =
        of(CylinderDrawing.at(ENGINE, valves(0), 0), Ink.PISTON)
            .mapToDouble(Bounds::top)
            .max()
            .orElseThrow();
    assertThat(top - crown).isCloseTo(ENGINE.crankGear().dropMm(degrees), within(1e-9));
    assertThat(shapes).allMatch(s -> CylinderDrawing.bounds(ENGINE).holds(s.bounds()));
  }
}
