package tightside.sheet;

/** What a person enters at a step. */
public sealed interface Entry {

  /** A box: done, or yes and no. */
  record Answer(boolean yes) implements Entry {}

  /** A number in the unit of its field. */
  record Number(double value) implements Entry {
    public Number {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("an entry is a finite number, not " + value);
      }
    }
  }

  /** Words, or a value of the maker's as it was read. */
  record Text(String words) implements Entry {}
}
