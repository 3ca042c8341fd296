package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tightside.drive.Seen;
import tightside.lesson.Hunt;
import tightside.lesson.LessonSheet;
import tightside.lesson.Lessons;
import tightside.lesson.ReadyLesson;
import tightside.print.Form;

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

  /** The lesson with the most to tell, one of two columns, and a hunt: a page each, and no more. */
  @Test
  void everyHandOutAndEveryKeyIsOnePage() throws IOException {
    List<LessonSheet> sheets =
        new ArrayList<>(
            List.of(
                Lessons.sheet(ReadyLesson.TOOL_GOES_IN),
                Lessons.sheet(ReadyLesson.TWO_TURNS),
                Lessons.sheet(ReadyLesson.TEN_DEGREES)));
    Hunt hunt = Hunt.drawn(Lessons.setting("v-six-two-stages"), Seen.COVER_OFF, 7).orElseThrow();
    sheets.add(hunt.sheet(1));
    for (boolean before : new boolean[] {false, true}) {
      assertThat(pages(LessonPaper.handout(sheets, s -> before))).isEqualTo(sheets.size());
    }
    assertThat(pages(LessonPaper.key(sheets, s -> true))).isEqualTo(sheets.size());
  }

  private static int pages(String html) throws IOException {
    try (PDDocument document =
        Loader.loadPDF(Form.of(Path.of("x.pdf")).orElseThrow().bytes(html))) {
      return document.getNumberOfPages();
    }
  }

  @Test
  void paperSaysThatALessonWasTakenBeforeAndNotWhatItsAnswerWas() {
    LessonSheet paint = Lessons.sheet(ReadyLesson.PAINT);
    String fresh = LessonPaper.handout(List.of(paint), s -> false);
    String again = LessonPaper.handout(List.of(paint), s -> true);
    String fact =
        "<p class=\"before\">Taken before on this computer: whoever took it may know what is wrong.</p>\n";
    assertThat(fresh).doesNotContain("Taken before").contains("I have taken it before");
    assertThat(again.replace(fact, "")).isEqualTo(fresh);
    assertThat(LessonPaper.key(List.of(paint), s -> true)).contains("may come from memory");
  }

  @Test
  void titlesQuoteTheBeliefAndDoNotSayItAsTrue() {
    for (ReadyLesson lesson : ReadyLesson.values()) {
      assertThat(lesson.title()).matches("\".+\" \u2013 (is|do|are|does) (it|they)\\?");
    }
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
