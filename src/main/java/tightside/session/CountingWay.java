package tightside.session;

/** Two ways to count the same strand. They differ by one, and are mixed up easily. */
public enum CountingWay {
  /** Links from one marked link to the next. */
  MARK_TO_MARK(0),
  /** The plain links between the two marked ones. */
  BETWEEN(1);

  private final int toLinks;

  CountingWay(int toLinks) {
    this.toLinks = toLinks;
  }

  /** What has to be added to get links from mark to mark. */
  int toLinks() {
    return toLinks;
  }
}
