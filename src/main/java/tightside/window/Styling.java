package tightside.window;

import javafx.css.PseudoClass;

/** States that the style sheet tells apart. */
final class Styling {

  static final PseudoClass CAUTION = PseudoClass.getPseudoClass("caution");
  static final PseudoClass NOTICE = PseudoClass.getPseudoClass("notice");
  static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
  static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

  private Styling() {}
}
