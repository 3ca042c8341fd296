package tightside.sheet;

/** What an entry says about the drive. */
public enum Verdict {
  RIGHT,
  WRONG,
  /** The entry is kept, but the sheet can't tell whether it is right. */
  OPEN
}
