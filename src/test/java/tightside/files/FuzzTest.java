package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import com.networknt.schema.Schema;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Spoilt files: nothing escapes, nothing hangs, every refusal says where and what. */
class FuzzTest {

  private static final int MUTATIONS = 6_000;

  private final Schema schema = SchemaTest.schema();

  private static List<String> originals() {
    List<String> originals = new ArrayList<>();
    originals.add(Samples.answered().replaceAll(" +#.*", ""));
    originals.add(Samples.answered());
    originals.add(Samples.twoWheels());
    originals.add(Samples.text("/tightside/files/counted.yaml"));
    originals.add(Samples.text("/tightside/files/three-wheels.yaml"));
    for (long seed = 0; seed < 4; seed++) {
      originals.add(ModelWriter.write(new ModelMaker(seed).next()));
    }
    return originals;
  }

  @Test
  void everySpoiltFileIsReadOrRefusedAtAPlaceInASentence() {
    List<String> originals = originals();
    int refused = 0;
    for (long seed = 0; seed < MUTATIONS; seed++) {
      String text = new Mutator(seed).spoilt(originals.get((int) (seed % originals.size())));
      String shown = "seed " + seed + "\n" + text;
      ModelReading reading =
          assertTimeoutPreemptively(
              Duration.ofSeconds(5), () -> ModelReader.parse(text), () -> shown);
      reading.problems().forEach(problem -> assertSaysWhereAndWhat(problem, text, shown));
      if (reading.model().isEmpty()) {
        refused++;
      } else {
        assertThat(SchemaTest.refusals(schema, text)).as(shown).isEmpty();
      }
    }
    assertThat(refused).isBetween(MUTATIONS / 2, MUTATIONS * 19 / 20);
  }

  private static void assertSaysWhereAndWhat(Problem problem, String text, String shown) {
    String[] lines = text.split("\r\n|\r|\n", -1);
    assertThat(problem.line()).as(shown).isBetween(1, lines.length);
    String line = lines[problem.line() - 1];
    assertThat(problem.column())
        .as(() -> problem + " in " + shown)
        .isBetween(1, line.codePointCount(0, line.length()) + 1);
    Sentences.assertReadable(problem.message());
  }
}
