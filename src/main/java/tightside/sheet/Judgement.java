package tightside.sheet;

/**
 * A verdict with what it means.
 *
 * @param words a sentence; what is wrong and what to do, or why it can't be told
 */
public record Judgement(Verdict verdict, String words) {

  static Judgement right(String words) {
    return new Judgement(Verdict.RIGHT, words);
  }

  static Judgement wrong(String words) {
    return new Judgement(Verdict.WRONG, words);
  }

  static Judgement open(String words) {
    return new Judgement(Verdict.OPEN, words);
  }
}
