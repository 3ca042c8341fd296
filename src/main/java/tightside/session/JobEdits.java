package tightside.session;

import java.util.List;
import tightside.record.Answer;
import tightside.record.Progress;
import tightside.sheet.Step;

/**
 * What a person does to a job. A job that is finished stays as it is until it is taken up again.
 */
public final class JobEdits {

  private static final int SHOWN = 40;

  private JobEdits() {}

  /** Enters an answer at a step. */
  public static Edit enter(Snapshot now, Step step, Answer answer) {
    return open(now)
        ? single(now, "Enter: " + brief(step.text()), progress(now).entered(step.id(), answer))
        : nothing(now);
  }

  /** Takes the answer of a step back. */
  public static Edit clear(Snapshot now, Step step) {
    return open(now)
        ? single(now, "Clear: " + brief(step.text()), progress(now).cleared(step.id()))
        : nothing(now);
  }

  /** Notes what stands in a step's field before it is entered. */
  public static Edit type(Snapshot now, Step step, String text) {
    return open(now)
        ? Edit.partOf(
            "type " + step.id(),
            "Type: " + brief(step.text()),
            with(now, progress(now).typed(step.id(), text)))
        : nothing(now);
  }

  /** Writes the job's note. */
  public static Edit note(Snapshot now, String text) {
    return open(now)
        ? Edit.partOf("job note", "Write the job's note", with(now, progress(now).noted(text)))
        : nothing(now);
  }

  /**
   * Stops the work by a card; the job is taken up again for it where it was finished.
   *
   * @param card id of its step on the sheet
   */
  public static Edit stop(Snapshot now, String card) {
    return single(now, "Stop the work", progress(now).reopened().stopped(card));
  }

  /** Puts the stop card away. */
  public static Edit goOn(Snapshot now) {
    return single(now, "Put the stop card away", progress(now).wentOn());
  }

  /**
   * @param leftOpen steps that were not done, as they are shown
   */
  public static Edit finish(Snapshot now, List<String> leftOpen) {
    return open(now)
        ? single(now, "Finish the job", progress(now).wentOn().finished(leftOpen))
        : nothing(now);
  }

  public static Edit reopen(Snapshot now) {
    return single(now, "Take the finished job up again", progress(now).reopened());
  }

  private static Progress progress(Snapshot now) {
    return now.job().progress();
  }

  private static boolean open(Snapshot now) {
    return !progress(now).finished();
  }

  private static Edit nothing(Snapshot now) {
    return Edit.single("Nothing", now);
  }

  private static Edit single(Snapshot now, String name, Progress progress) {
    return Edit.single(name, with(now, progress));
  }

  private static Snapshot with(Snapshot now, Progress progress) {
    return now.with(now.job().with(progress));
  }

  private static String brief(String sentence) {
    return sentence.length() <= SHOWN ? sentence : sentence.substring(0, SHOWN).strip() + "\u2026";
  }
}
