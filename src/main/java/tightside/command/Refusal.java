package tightside.command;

/** A word on the command line that can't be used; the message says what would be right. */
final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  Refusal(String message) {
    super(message);
  }
}
