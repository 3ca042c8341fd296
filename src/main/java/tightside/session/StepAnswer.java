package tightside.session;

import java.util.Optional;
import tightside.drive.Limits;
import tightside.record.Answer;
import tightside.record.Verdict;
import tightside.sheet.Entry;
import tightside.sheet.Field;
import tightside.sheet.Judgement;
import tightside.sheet.Step;

/**
 * What a person typed or pressed at a step, read and judged.
 *
 * @param entry nothing where it can't be read
 * @param judgement what it says, or why it can't be read
 */
public record StepAnswer(Step step, String given, Optional<Entry> entry, Judgement judgement) {

  public static final String YES = "yes";
  public static final String NO = "no";

  /** Far beyond anything that is read on an engine. */
  private static final double MOST = 100_000;

  /**
   * Reads what was given at a step: yes or no, a number, or words.
   *
   * @param given for a tick, yes
   */
  public static StepAnswer of(Step step, String given) {
    if (step.field() instanceof Field.Tick || step.field() instanceof Field.YesNo) {
      return judged(step, given, new Entry.Answer(given.equals(YES)));
    } else if (step.field() instanceof Field.Links || step.field() instanceof Field.Reading) {
      return number(step, given.strip());
    }
    return judged(step, given.strip(), new Entry.Text(given.strip()));
  }

  private static StepAnswer judged(Step step, String given, Entry entry) {
    return new StepAnswer(step, given, Optional.of(entry), step.judge(entry));
  }

  private static StepAnswer number(Step step, String given) {
    Typed typed =
        step.field() instanceof Field.Links links
            ? Decimals.whole(given, "The count", new Limits(1, links.most(), "links"))
            : Decimals.within(given, "The reading", new Limits(-MOST, MOST, unit(step)));
    return typed instanceof Typed.Number number
        ? judged(step, given, new Entry.Number(number.value()))
        : new StepAnswer(
            step,
            given,
            Optional.empty(),
            new Judgement(tightside.sheet.Verdict.OPEN, typed.refusal().orElseThrow()));
  }

  private static String unit(Step step) {
    return ((Field.Reading) step.field()).unit().sign();
  }

  /**
   * As it is kept; only where it could be read.
   *
   * @param part of the work that the step belongs to
   */
  public Answer answer(String part) {
    return new Answer(part + ": " + step.text(), given, verdict(), judgement.words());
  }

  private Verdict verdict() {
    boolean judges = !(step.field() instanceof Field.Tick || words());
    return !judges
        ? Verdict.NOTED
        : switch (judgement.verdict()) {
          case RIGHT -> Verdict.RIGHT;
          case WRONG -> Verdict.WRONG;
          case OPEN -> Verdict.OPEN;
        };
  }

  /** Whether the step takes words that nothing judges. */
  private boolean words() {
    return step.field() instanceof Field.Maker || step.field() instanceof Field.Note;
  }
}
