package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * The answered example's slack is the model format's own (computed there by two other programs); a
 * pitch of 8 mm on 36 teeth is 10 camshaft degrees by arithmetic.
 */
class HoldBackVerbTest {

  private static JsonNode chain(String... more) {
    String[] words = {"hold-back", Run.ANSWERED, "--json"};
    Run run =
        Run.of(
            java.util.stream.Stream.of(words, more)
                .flatMap(java.util.Arrays::stream)
                .toArray(String[]::new));
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    return run.json().get("chains").get(0);
  }

  private static JsonNode reseat(JsonNode chain, String shaft, int teeth) {
    return StreamSupport.stream(chain.get("reseats").spliterator(), false)
        .filter(r -> r.get("shaft").asString().equals(shaft) && r.get("teeth").asInt() == teeth)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void slackOfTheLoopAndOfEveryStrand() {
    JsonNode chain = chain();
    assertThat(chain.get("slack").asDouble()).isCloseTo(2.48, within(0.005));
    double sum = 0;
    for (JsonNode strand : chain.get("strands")) {
      sum += strand.get("slack").asDouble();
    }
    assertThat(sum).isCloseTo(chain.get("slack").asDouble(), within(1e-9));
  }

  @Test
  void everySprocketFromMinusThreeToThree() {
    JsonNode chain = chain();
    assertThat(chain.get("reseats")).hasSize(18);
    JsonNode ahead = reseat(chain, "intake", 1);
    assertThat(ahead.get("possible").asBoolean()).isFalse();
    assertThat(ahead.get("missing").asDouble()).isCloseTo(8, within(1e-3));
    assertThat(ahead.get("turnNeeded").asDouble()).isCloseTo(10, within(1e-3));
    double slack = chain.get("strands").get(0).get("slack").asDouble();
    assertThat(reseat(chain, "intake", -1).get("missing").asDouble())
        .isCloseTo(8 - slack, within(1e-9));
  }

  @Test
  void lessSlackWithThePlungerFurtherOut() {
    assertThat(chain("--extension", "5").get("slack").asDouble())
        .isLessThan(chain().get("slack").asDouble());
  }

  @Test
  void playOfTheToolsMakesWrongLaysPossible(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("loose.yaml");
    String model = Files.readString(Path.of(Run.ANSWERED));
    Files.writeString(file, model + "\njob:\n  locking-tool-play: 5.5\n");
    Run run = Run.of("hold-back", file.toString(), "--json");
    JsonNode lay = reseat(run.json().get("chains").get(0), "intake", -1);
    assertThat(lay.get("possible").asBoolean()).isTrue();
    assertThat(lay.get("missing").asDouble()).isZero();
    assertThat(lay.get("turnNeeded").asDouble()).isZero();
    assertThat(Run.of("hold-back", file.toString()).out()).contains("POSSIBLE");
  }

  @Test
  void theTextEndsInARuleForTheDrive() {
    Run run = Run.of("hold-back", Run.ANSWERED, "--cover", "on");
    assertThat(run.out())
        .contains("If intake must be turned more than 5.0 of its degrees to meet its dowel")
        .contains("most dangerous first")
        .contains("Shown soonest");
  }

  /** One pitch of 8 mm too many lies in the run that gained a link. */
  @Test
  void aWrongLaySaysWhereItsSparePitchLies() {
    assertThat(Run.of("hold-back", Run.ANSWERED).out())
        .contains("the run from exhaust to crank has 8.0 mm to spare and sags");
  }

  @Test
  void aFrictionJointIsSaidToFixNothing() {
    assertThat(Run.of("hold-back", "models/counterclockwise-balancers.yaml").out())
        .contains("exhaust is held by its bolt's clamp alone");
  }

  @Test
  void aPlungerCantBeHeldOutsideItsTravel() {
    for (String mm : new String[] {"40", "-1", "NaN"}) {
      Run run = Run.of("hold-back", Run.ANSWERED, "--extension=" + mm);
      assertThat(run.code()).isEqualTo(2);
      assertThat(run.err()).contains("from 0 to 28 mm");
    }
  }
}
