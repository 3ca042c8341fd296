package tightside.print;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import tightside.record.JobRecord;
import tightside.sheet.JobCard;
import tightside.sheet.JobSheet;
import tightside.sheet.Work;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * Whole files to be written: the sheet, the card, the record. A PDF takes a second or two.
 *
 * @param form PDF or HTML
 */
public record Printed(Form form, Paper paper) {

  /** Letters of a card that is read on a screen, points. */
  private static final double SCREEN_POINTS = 12;

  /**
   * The job sheet.
   *
   * @param notProved what must be known of a drive that is only measured
   */
  public byte[] sheet(Work work, Optional<String> notProved) {
    return form.bytes(
        SheetHtml.sheet(
            JobSheet.of(work),
            Optional.of(Solver.solve(work.drive(), State.reference())),
            paper,
            notProved));
  }

  /** The card, on one page where its letters stay large enough to be read. */
  public byte[] card(Work work, Optional<String> notProved) {
    JobCard card = JobCard.of(work);
    return form == Form.PDF
        ? Pdf.card(card, paper, notProved)
        : SheetHtml.card(card, paper, SCREEN_POINTS, notProved).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * A record as it was filled in.
   *
   * @param damage what was found wrong with its file
   * @param zone in which moments are told
   */
  public byte[] record(JobRecord record, List<String> damage, ZoneId zone) {
    return form.bytes(RecordHtml.of(record, damage, zone, paper));
  }
}
