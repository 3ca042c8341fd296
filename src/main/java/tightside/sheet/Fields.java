package tightside.sheet;

import tightside.words.Numbers;

/** How entries are judged. */
final class Fields {

  private Fields() {}

  static Judgement unfit(String wanted) {
    return Judgement.open("This step takes " + wanted + ".");
  }

  static Judgement links(Field.Links field, double value) {
    if (!countable(field, value)) {
      return Judgement.open(
          "Links are whole, from 1 to the chain's %d: count again.".formatted(field.most()));
    }
    long over = (long) value - field.right();
    if (over == 0) {
      return Judgement.right("%s belong there.".formatted(Numbers.count(field.right(), "link")));
    }
    return Judgement.wrong(
        "%s too %s: %d (%d plain) belong from %s to %s. %sCount again; if it stays so, a sprocket sits on the wrong tooth."
            .formatted(
                Numbers.count(Math.abs(over), "link"),
                over > 0 ? "many" : "few",
                field.right(),
                field.between(),
                field.from(),
                field.to(),
                over == -1 ? "If these were the plain links alone, add one. " : ""));
  }

  /** Whether a number can be a count of links at all. */
  static boolean countable(Field.Links field, double value) {
    return value == Math.rint(value) && value >= 1 && value <= field.most();
  }
}
