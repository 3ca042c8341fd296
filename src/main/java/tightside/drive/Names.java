package tightside.drive;

import java.util.regex.Pattern;

/** What a shaft, a chain, a guide or a tensioner may be called. */
public final class Names {

  /**
   * Letters, digits, space, underscore, hyphen; what a command line can tell apart from its signs.
   */
  public static final Pattern FORM = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} _-]{0,39}");

  private Names() {}

  static void refuseNonsense(String what, String name) {
    if (!FORM.matcher(name).matches()) {
      throw new IllegalArgumentException(
          "a "
              + what
              + "'s name has 1 to 40 letters, digits, spaces, _ or -, not \""
              + name
              + "\"");
    }
  }
}
