package tightside.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tightside.files.RecordText;
import tightside.record.Answer;
import tightside.record.Event;
import tightside.record.Head;
import tightside.record.JobRecord;
import tightside.record.ModelText;
import tightside.record.Verdict;

/**
 * The record on paper. What it has to hold is the trade's own wish (common practice, no source).
 */
class RecordHtmlTest {

  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");
  private static final ModelText MODEL = ModelText.of("two.yaml", "/bench/two.yaml", "abc");
  private static final Answer WRONG =
      new Answer("Count the links from crank to intake.", "50", Verdict.WRONG, "One too few.");
  private static final Answer RIGHT =
      new Answer("Count the links from crank to intake.", "51", Verdict.RIGHT, "It is right.");

  private static JobRecord record() {
    return JobRecord.begun(new Head(NOON, "Tightside", MODEL))
        .with(new Event.Entered(NOON.plusSeconds(60), "a", WRONG))
        .with(new Event.TakenBack(NOON.plusSeconds(90), "a", WRONG, Optional.empty()))
        .with(new Event.Entered(NOON.plusSeconds(120), "a", RIGHT))
        .with(new Event.Noted(NOON.plusSeconds(150), "<script>alert(1)</script>"))
        .with(new Event.Finished(NOON.plusSeconds(180), List.of("Wipe the paint off.")));
  }

  private static String html(JobRecord record, ZoneId zone) {
    return RecordHtml.of(record, List.of(), zone, Paper.A4);
  }

  @Test
  void everyEntryStandsWithItsTimeAndVerdict() {
    String html = html(record(), ZoneOffset.UTC);
    assertThat(html).contains("12:01:00", "12:02:00", "50", "WRONG", "One too few.", "51", "right");
    assertThat(html).contains("struck", "Taken back; nothing stands here now.");
    assertThat(html).contains("Wipe the paint off.", "and not changed since");
    assertThat(html).doesNotContain("<script>").contains("&lt;script&gt;");
  }

  /** The digest of "abc" is the first example of FIPS 180-2, appendix B.1. */
  @Test
  void modelAndSealStandThereWhole() {
    String html = html(record(), ZoneOffset.UTC).replace(" ", "");
    assertThat(html)
        .contains("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")
        .contains(RecordText.of(record()).seal());
  }

  @Test
  void whatWasChangedAfterTheEndIsSetApart() {
    JobRecord more = record().with(new Event.Reopened(NOON.plusSeconds(240)));
    assertThat(html(more, ZoneOffset.UTC))
        .contains("and CHANGED since", "changed after the job was finished", "TAKEN UP AGAIN");
  }

  @Test
  void momentsAreToldInTheZoneThatIsNamed() {
    assertThat(html(record(), ZoneOffset.ofHours(2)))
        .contains("2 March 2026, 14:00:00 (+02:00)", "14:01:00");
  }

  @Test
  void aDamagedFileAndAModelThatWasChangedShow() {
    ModelText changed = new ModelText("two.yaml", "", "abd", MODEL.sha256());
    JobRecord record = JobRecord.begun(new Head(NOON, "Tightside", changed));
    String html =
        RecordHtml.of(record, List.of("line 3 was changed"), ZoneOffset.UTC, Paper.LETTER);
    assertThat(html).contains("line 3 was changed", "does not have this digest", "not finished");
  }

  @Test
  void itIsAPdfToo() {
    byte[] pdf = new Printed(Form.PDF, Paper.A4).record(record(), List.of(), ZoneOffset.UTC);
    assertThat(Pdf.pages(pdf)).isEqualTo(1);
  }
}
