package tightside.window;

import java.util.Locale;
import tightside.drive.Drive;

/** Crank angles as the window shows them. */
final class Angles {

  private Angles() {}

  /** As it is typed: no more digits than a hand can set. */
  static String typed(double degrees) {
    String shown = String.format(Locale.ROOT, "%.1f", degrees);
    String bare = shown.endsWith(".0") ? shown.substring(0, shown.length() - 2) : shown;
    return bare.equals("-0") ? "0" : bare;
  }

  /** Teeth of the crankshaft's sprocket on the first chain that has one. */
  static int crankTeeth(Drive drive) {
    String crank = drive.crankshaft().name();
    return drive.chainsOn(crank).get(0).sprocketOn(crank).orElseThrow().teeth();
  }
}
