package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shoe that runs into the driving sprocket before it has taken up the slack of a worn chain. */
class NoWayRoundTest {

  private static final String SHOE_BESIDE_A_SPROCKET =
      """
      tightside: 1
      name: Shoe that meets a sprocket
      rotation: clockwise
      shafts:
        crank: { role: crankshaft, at: [0, 0] }
        cam: { role: camshaft, at: [0, 200] }
      chains:
        main:
          kind: bush
          pitch: 8.0
          links: 81
          plate-height: 7.2
          roller-diameter: 5.0
          route:
            - { sprocket: crank, teeth: 20, mark: 180 }
            - shoe: pusher
              face: [[-55, 25], [-56, 60], [-67, 100]]
              plunger: { bearing: 90, travel: 60 }
            - { sprocket: cam, teeth: 40, mark: 0 }
      """;

  @TempDir private Path folder;
  private String file;

  @BeforeEach
  void write() throws IOException {
    file = Files.writeString(folder.resolve("shoe.yaml"), SHOE_BESIDE_A_SPROCKET).toString();
  }

  @Test
  void newItCanBeCounted() {
    Run run = Run.of("counts", file);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("Together 81 links", "no stretch that can be entered uses");
  }

  @Test
  void wornItSaysThatNothingCanBeCounted() {
    Run run = Run.of("stretch", file, "2");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out())
        .contains("NO WAY ROUND", "Chain main finds no way round")
        .doesNotContain("No tensioner", "Together", "  cam: ");
  }

  @Test
  void wornItTellsProgramsToo() {
    Run run = Run.of("stretch", file, "2", "--json");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.json().get("chains").get(0).get("strands")).isEmpty();
    assertThat(run.json().get("unknown").get(0).asString()).contains("finds no way round");
  }
}
