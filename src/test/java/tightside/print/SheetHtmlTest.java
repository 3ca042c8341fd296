package tightside.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import tightside.drive.Seen;
import tightside.job.Bolt;
import tightside.job.Job;
import tightside.sheet.JobCard;
import tightside.sheet.JobSheet;
import tightside.sheet.Work;
import tightside.sheet.Works;
import tightside.timing.Solver;
import tightside.timing.State;

/** What people typed stands on the page as they typed it, and is nothing but text there. */
class SheetHtmlTest {

  private static final String HOSTILE = "<script>alert(\"1\")</script> & 'Grüße' {{css}} {{{x}}}";
  private static final String NOTE =
      "Überstand prüfen, Ωμέγα, распредвал \u202Ereversed \u05E9\u05DC\u05D5\u05DD (1)\nsecond line "
          + "w".repeat(400);

  private static Work hostile() {
    Work work =
        Works.named(
            Works.of("two-cams-arm.yaml", Seen.COVER_ON),
            HOSTILE,
            "<b>" + HOSTILE,
            Optional.empty());
    Bolt bolt =
        new Bolt(
            HOSTILE, Bolt.Thread.LEFT, true, Optional.of(HOSTILE), Optional.empty(), List.of());
    return Works.with(
        work,
        new Job(
            OptionalDouble.of(0.5),
            Optional.of(NOTE),
            Optional.of(HOSTILE),
            Job.Order.STEP_BY_STEP,
            List.of(bolt)));
  }

  private static String page(Work work) {
    return SheetHtml.sheet(
        JobSheet.of(work),
        Optional.of(Solver.solve(work.drive(), State.reference())),
        Paper.A4,
        Optional.empty());
  }

  private static Document parsed(String html) {
    try {
      String text = html.replace("<!DOCTYPE html>", "");
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    } catch (Exception e) {
      throw new AssertionError("not well formed", e);
    }
  }

  @Test
  void whatPeopleTypedIsTextAndNothingElse() throws IOException {
    String html = page(hostile());
    Document page = parsed(html);
    assertThat(page.getElementsByTagName("script").getLength()).isZero();
    assertThat(page.getElementsByTagName("b").getLength()).isZero();
    assertThat(page.getElementsByTagName("title").item(0).getTextContent()).contains(HOSTILE);
    assertThat(html).doesNotContain("\u202E");
    String text = text(Pdf.of(html));
    assertThat(text)
        .contains("<script>alert(\"1\")</script> & 'Grüße'")
        .contains("Überstand prüfen, Ωμέγα, распредвал")
        .contains("w".repeat(30))
        .contains("LEFT-HAND THREAD", "MUST BE NEW")
        .contains("page 1 of")
        .doesNotContain("#");
  }

  @Test
  void aCardIsOnePageHoweverLongItsWords() throws IOException {
    JobCard card =
        JobCard.of(
            Works.named(
                Works.of("two-cams-arm.yaml", Seen.COVER_ON),
                "W".repeat(120),
                "",
                Optional.empty()));
    byte[] pdf = Pdf.card(card, Paper.LETTER, Optional.empty());
    assertThat(Pdf.pages(pdf)).isEqualTo(1);
    assertThat(text(pdf)).contains("17").contains("16").contains("To write in");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612f);
      assertThat(document.getPage(0).getMediaBox().getHeight()).isEqualTo(792f);
    }
    parsed(SheetHtml.card(card, Paper.A4, 12, Optional.empty()));
  }

  @Test
  void lettersThatTheFontLacksAreNamed() {
    assertThat(Letters.lacking("Grüße, Ωμέγα, распредвал, שלום, ½°·×")).isEmpty();
    assertThat(Letters.lacking("時規")).containsExactly("時", "規");
  }

  /** Hebrew runs from right to left: in the order of the page its last letter stands first. */
  @Test
  void wordsThatRunFromTheRightAreTurnedRound() {
    assertThat(new RightToLeft.Reversed().reorderRTLTextToLTR("אב(ג")).isEqualTo("ג)בא");
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s*\\R\\s*", " ");
    }
  }
}
