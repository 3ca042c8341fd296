package tightside.lesson;

import java.util.EnumSet;
import java.util.Set;

/**
 * A prediction marked: every part on its own, so that a wrong cause does not take the credit for
 * the right direction.
 *
 * @param right the parts that were right
 */
public record Marking(Set<Part> right) {

  public Marking {
    right = Set.copyOf(right);
  }

  /** Marks a prediction against what is so. */
  static Marking of(Truth truth, Diagnosis predicted) {
    Set<Part> right = EnumSet.noneOf(Part.class);
    if (predicted.cause() == truth.right().cause()) {
      right.add(Part.CAUSE);
    }
    if (truth.shafts().contains(predicted.shaft())) {
      right.add(Part.SPROCKET);
    }
    if (predicted.way() == truth.right().way()) {
      right.add(Part.DIRECTION);
    }
    if (truth.margin().allows(truth.right().amount(), predicted.amount())) {
      right.add(Part.AMOUNT);
    }
    return new Marking(right);
  }

  public boolean right(Part part) {
    return right.contains(part);
  }

  public int points() {
    return right.size();
  }
}
