package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tightside.engine.Engine;
import tightside.engine.Spring;

/** What may be said of an engine, and what goes without saying. */
class EngineSectionTest {

  private static final String PLAIN =
      Samples.answered()
          + """
          engine:
            bore: 78
            stroke: 73
            rod: 128
            compression-ratio: 10.5
            valves:
              - { shaft: intake, lift: 9, duration: 232, centreline: 108, law: cycloidal, tilt: 17, gap: 6 }
          """;

  private static Engine engine(String text) {
    ModelReading reading = ModelReader.parse(text);
    assertThat(reading.problems()).isEmpty();
    return reading.model().flatMap(Model::engine).orElseThrow();
  }

  @Test
  void oneCylinderUnlessSaid() {
    Engine engine = engine(PLAIN);
    assertThat(engine.phasesDegrees()).containsExactly(0.0);
    assertThat(engine.atReferenceDegrees()).isEmpty();
    assertThat(engine.valves().get(0).spring()).isEmpty();
    Model model = ModelReader.parse(PLAIN).model().orElseThrow();
    assertThat(ModelWriter.write(model)).doesNotContain("phases", "at-reference", "spring");
  }

  @Test
  void cylindersPlaceAndSpring() {
    Engine engine =
        engine(
            PLAIN
                .replace(
                    "  valves:", "  phases: [0, 540, 180, 360]\n  at-reference: -30\n  valves:")
                .replace("gap: 6 }", "gap: 6, spring: { preload: 210, rate: 28.5 } }"));
    assertThat(engine.phasesDegrees()).isEqualTo(List.of(0.0, 540.0, 180.0, 360.0));
    assertThat(engine.atReferenceDegrees()).hasValue(-30);
    assertThat(engine.valves().get(0).spring()).isEqualTo(Optional.of(new Spring(210, 28.5)));
  }
}
