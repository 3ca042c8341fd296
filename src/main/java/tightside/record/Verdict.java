package tightside.record;

/** How an entry was judged when it was made. */
public enum Verdict {
  /** It fits what belongs there. */
  RIGHT,
  /** It speaks against the drive or the work. */
  WRONG,
  /** It can't settle the matter either way. */
  OPEN,
  /** It was done or read, and there is nothing to judge it by. */
  NOTED
}
