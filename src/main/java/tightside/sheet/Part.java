package tightside.sheet;

/** The parts of a sheet, in the order of the work. */
public enum Part {
  CAUTIONS("Before you begin"),
  BEFORE("1. Is the drive right now?"),
  PAINT("2. Paint"),
  LOCK("3. Lock"),
  COMPARE("4. New parts beside old ones"),
  PLUG("5. Plug the timing well, count tools and bolts"),
  HOLD_BACK("6. Hold the tensioner back"),
  HANG("7. Keep the chain hanging tight"),
  OFF("8. Off"),
  ON("9. On"),
  LET_OUT("10. Let the tensioner out"),
  TIGHTEN("11. Tighten"),
  PROVE("12. Prove it"),
  AGAIN("13. Prove it again without the paint"),
  UNPROVED("What stays unproved"),
  STOP("Stop cards");

  private final String title;

  Part(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }

  /** As it begins the ids of its steps. */
  String slug() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
