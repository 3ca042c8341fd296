package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tightside.lesson.ReadyLesson;

/** Lessons on paper: two files, and the answer in one of them. */
class LessonVerbTest {

  @TempDir private Path folder;

  private String[] written(String... words) throws IOException {
    Path handout = folder.resolve("handout.html");
    Path key = folder.resolve("key.html");
    String[] all = new String[words.length + 5];
    all[0] = "lesson";
    System.arraycopy(words, 0, all, 1, words.length);
    all[words.length + 1] = "-o";
    all[words.length + 2] = handout.toString();
    all[words.length + 3] = "--key";
    all[words.length + 4] = key.toString();
    Run run = Run.of(all);
    assertThat(run.code()).as(run.err()).isZero();
    return new String[] {Files.readString(handout), Files.readString(key)};
  }

  @ParameterizedTest
  @EnumSource(ReadyLesson.class)
  void aHandOutAsksAndAKeyAnswers(ReadyLesson lesson) throws IOException {
    String[] files = written(lesson.id());
    assertThat(files[0]).contains("<svg", "Your prediction, in ink", "What you see");
    assertThat(files[0])
        .doesNotContain("crank degrees retarded")
        .doesNotContain("It is")
        .doesNotContain("One tooth of")
        .doesNotContain("class=\"error\"")
        .doesNotContain("class=\"ghost\"")
        .doesNotContain("class=\"pointer\"")
        .doesNotContain("<?xml")
        .doesNotContain("Key:");
    assertThat(files[1]).contains("Key: ", "One point for each of the four", "to be stated");
    assertThat(files[0] + files[1]).doesNotContain("{{").doesNotContain("}}");
  }

  @Test
  void aHuntHasFiveVariantsOnFivePages() throws IOException {
    String[] files = written("hunt", "--seed", "7");
    for (int variant = 1; variant <= 5; variant++) {
      assertThat(files[0]).contains("seed 7, variant " + variant);
      assertThat(files[1]).contains("Key: Find the fault, seed 7, variant " + variant);
    }
    assertThat(written("hunt", "--seed", "7")).isEqualTo(files);
    assertThat(written("hunt", "--seed", "8")[1]).isNotEqualTo(files[1]);
  }

  @Test
  void everyWrongWordGetsOneSentence() {
    assertThat(Run.of("lesson", "pant", "-o", "x.html").err())
        .contains("there is no lesson \"pant\"; the lessons are paint, two-turns");
    assertThat(Run.of("lesson", "paint").err()).contains("say where to write: -o HANDOUT.pdf");
    assertThat(Run.of("lesson", "paint", "-o", "x.doc").err())
        .contains("give a name that ends in .pdf or .html, not x.doc");
    assertThat(Run.of("lesson", "hunt", "--cover", "on", "-o", "x.html").err())
        .contains("Too little can be seen of this drive with the cover on");
    assertThat(Run.of("lesson", "hunt", "--model", "none.yaml", "-o", "x.html").code())
        .isEqualTo(2);
  }

  @Test
  void withNoNameTheLessonsAreListed() {
    assertThat(Run.of("lesson").out()).contains("paint", "Paint is a timing mark", "hunt");
    assertThat(Run.of("lesson", "--json").out()).contains("\"name\":\"early-cam\"");
  }
}
