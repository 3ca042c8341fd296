package tightside.window;

import tightside.record.Answer;
import tightside.session.StepAnswer;

/** A verdict in one sentence, by its first word as by its colour. */
final class Judged {

  private Judged() {}

  static String sentence(Answer answer) {
    return switch (answer.verdict()) {
      case RIGHT -> "Right: " + answer.says();
      case WRONG -> "Wrong: " + answer.says();
      case OPEN -> "Open: " + answer.says();
      case NOTED ->
          answer.given().isEmpty() || answer.given().equals(StepAnswer.YES)
              ? "Done."
              : "Noted: " + answer.given();
    };
  }

  static String sentence(StepAnswer given) {
    return given.entry().isEmpty() ? given.judgement().words() : sentence(given.answer(""));
  }
}
