package tightside.lesson;

/** What can be wrong with a drive. */
public enum Cause {
  NOTHING("nothing is wrong"),
  WRONG_TOOTH("a sprocket on a wrong tooth"),
  WORN_CHAIN("a worn chain"),
  JOINT("a phaser or joint not at rest");

  private final String words;

  Cause(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
