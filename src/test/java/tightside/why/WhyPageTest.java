package tightside.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import tightside.drive.Drive;
import tightside.picture.Bounds;
import tightside.picture.Ink;
import tightside.picture.Picture;
import tightside.picture.Shape;
import tightside.reasoning.Answer;
import tightside.reasoning.CheckPlan;
import tightside.reasoning.Condition;
import tightside.reasoning.Evidence;
import tightside.reasoning.Forced;
import tightside.reasoning.Priors;
import tightside.reasoning.Reading;
import tightside.reasoning.Reasoner;
import tightside.reasoning.Subject;
import tightside.timing.Drives;

/** The page alone says why: the readings, the figures and where they come from, what to do next. */
class WhyPageTest {

  private static final Drive DRIVE = Drives.answered();
  private static final Reasoner REASONER = Reasoner.of(Subject.of(DRIVE));

  private static Answer explain(Reading... readings) {
    return REASONER.explain(Evidence.of(readings), Priors.usual(), CheckPlan.usual());
  }

  private static Reading angle(String shaft, double degrees) {
    return new Reading.CamAngle(shaft, degrees, 0.5, Condition.HOT_IDLE, false);
  }

  @Test
  void pageAndPrintSayTheSame() throws IOException {
    Answer jumped = explain(angle("intake", 0.2), angle("exhaust", -20.1));
    String html = WhyPage.html(DRIVE, jumped);
    byte[] pdf = WhyPage.pdf(DRIVE, jumped);
    String print;
    try (PDDocument document = Loader.loadPDF(pdf)) {
      print = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
    String page = html.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    for (String words :
        List.of(
            "the sprocket of exhaust sits 1 tooth behind on chain main",
            "exhaust reads -20.1 crank degrees off its place",
            "A SPROCKET MAY BE OFF ITS TOOTH",
            "What would settle it",
            "Look at the oil")) {
      assertThat(page).contains(words);
      assertThat(print).contains(words);
    }
    assertThat(html).contains("<svg").doesNotContain("{{");
  }

  /**
   * Example of the model format: late in the ratio 0.755 : 1.015 (cam degrees, exhaust, intake).
   */
  @Test
  void aWornChainForcesALineThroughTheReadings() {
    Answer worn = explain(angle("intake", -2.03), angle("exhaust", -1.51));
    Forced forced = worn.forced().orElseThrow();
    Forced.Line line =
        forced.lines().stream()
            .filter(l -> l.what().chain().equals(Optional.of("main")))
            .filter(l -> l.points().size() > 1)
            .findFirst()
            .orElseThrow();
    Forced.Point far = line.points().get(6);
    assertThat(far.y() / far.x()).isCloseTo(0.755 / 1.015, within(0.01));
    Picture picture = WhyPicture.of(worn).orElseThrow();
    assertThat(picture.description())
        .contains("Read: intake -2.0, exhaust -1.5")
        .contains("worn chain main comes as near as");
  }

  /** A sheet is wide enough for the factors of four readings. */
  @Test
  void manyReadingsAreToldInSeveralTables() {
    Reading intake = angle("intake", -2);
    Answer six = explain(intake, intake, intake, intake, angle("exhaust", -1.5), intake);
    String html = WhyPage.html(DRIVE, six);
    String[] tables = html.split("<thead>");
    assertThat(tables).hasSize(3);
    assertThat(tables[1])
        .contains(">prior<", "x 4 intake", ">two things at once")
        .doesNotContain("x 5", ">together<");
    assertThat(tables[2])
        .contains("x 5 exhaust", "x 6 intake", ">together<", ">two things at once")
        .doesNotContain(">prior<");
  }

  @Test
  void oneShaftIsALineAndNoneIsNoPicture() {
    Answer one = explain(angle("exhaust", -7));
    assertThat(one.forced().orElseThrow().up()).isEmpty();
    assertThat(WhyPicture.of(one)).isPresent();
    Answer none = explain(new Reading.PlungerStands("main", 14, 15));
    assertThat(WhyPicture.of(none)).isEmpty();
    assertThat(WhyPage.html(DRIVE, none)).doesNotContain("<svg");
  }

  /** Whatever was read, no words of the picture stand over others, nor over what was read. */
  @Test
  void wordsNeverStandOverWords() {
    double[][] read = {
      {0.3, -19.6}, {-5.1, -3.8}, {-2, -1.4}, {-0.3, 0.2}, {20, 20}, {-7, 0}, {12, -15}, {0, -1.2}
    };
    for (double[] pair : read) {
      Reading intake = angle("intake", pair[0]);
      for (Answer answer : List.of(explain(intake), explain(intake, angle("exhaust", pair[1])))) {
        Picture picture = WhyPicture.of(answer).orElseThrow();
        List<Shape.Text> words =
            picture.shapes().stream()
                .filter(s -> s instanceof Shape.Text)
                .map(Shape.Text.class::cast)
                .toList();
        assertThat(words).extracting(Shape.Text::words).contains("read");
        for (int i = 0; i < words.size(); i++) {
          Bounds bounds = words.get(i).bounds();
          assertThat(picture.bounds().holds(bounds)).as(words.get(i).words()).isTrue();
          assertThat(words.subList(i + 1, words.size()))
              .as(words.get(i).words())
              .noneMatch(other -> other.bounds().overlaps(bounds));
          assertThat(picture.shapes())
              .as(words.get(i).words())
              .noneMatch(s -> s.tag().ink() == Ink.MARK && s.bounds().overlaps(bounds));
        }
      }
    }
  }

  /** Every line that matters has its name, and what reaches anywhere has a row. */
  @Test
  void nothingIsLeftOutOfPictureAndTable() {
    Answer late = explain(angle("intake", 0.3), angle("exhaust", -19.6));
    List<String> words =
        WhyPicture.of(late).orElseThrow().shapes().stream()
            .filter(s -> s instanceof Shape.Text)
            .map(s -> ((Shape.Text) s).words())
            .toList();
    assertThat(words)
        .anyMatch(w -> w.startsWith("phaser exhaust, driven"))
        .anyMatch(w -> w.startsWith("phaser exhaust, stuck"))
        .anyMatch(w -> w.startsWith("exhaust -1 tooth"));
    Answer right = explain(angle("intake", -5.1), angle("exhaust", -3.8));
    assertThat(WhyPage.html(DRIVE, right))
        .contains("<td>nothing is wrong; what was read is spread</td>")
        .contains("<td>two things at once, most likely:")
        .contains("<td>something that is not on this list</td>");
  }

  /** The model format's example: 14.23 mm with a new chain, of a travel of 28 mm. */
  @Test
  void whatAReadingMeansStandsBesideIt() {
    Answer worn =
        explain(
            angle("intake", -2),
            new Reading.PlungerStands("main", 17, 18.5),
            new Reading.Calliper("main", 10, 80.16, 0.05),
            new Reading.Counted("main", "intake", "exhaust", 16));
    assertThat(WhyPage.html(DRIVE, worn))
        .contains("spread 0.5 crank degrees.")
        .contains("a new chain leaves it at 14.2 mm, its travel ends at 28.0 mm: 9.5 mm of travel")
        // 0.2 %: 1.015 and 0.755 cam degrees, 2.03 and 1.51 crank degrees
        .contains("0.20 % longer than new (0.14 to 0.26 within one spread)")
        .contains("worn so, intake 2.0 late and exhaust 1.5 late (crank degrees)")
        .contains("compare with the maker&#39;s limit, which is not known here")
        .contains("; 17 belong there.")
        .contains("it expected");
  }
}
