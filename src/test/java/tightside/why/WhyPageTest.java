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
import tightside.picture.Picture;
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

  @Test
  void oneShaftIsALineAndNoneIsNoPicture() {
    Answer one = explain(angle("exhaust", -7));
    assertThat(one.forced().orElseThrow().up()).isEmpty();
    assertThat(WhyPicture.of(one)).isPresent();
    Answer none = explain(new Reading.PlungerStands("main", 14, 15));
    assertThat(WhyPicture.of(none)).isEmpty();
    assertThat(WhyPage.html(DRIVE, none)).doesNotContain("<svg");
  }
}
