package tightside.files;

import java.util.Locale;
import java.util.Map;

/** The signs that a YAML text may be made of (YAML 1.2.2, 5.1, c-printable). */
final class TextSigns {

  private TextSigns() {}

  /**
   * @throws Unreadable at the first sign that is not to be had
   */
  static void refuseUnprintable(String text) throws Unreadable {
    int sign;
    for (int i = 0; i < text.length(); i += Character.charCount(sign)) {
      sign = text.codePointAt(i);
      if (!printable(sign)) {
        throw new Unreadable(
            Place.of(text, i),
            Fault.SIGN_UNPRINTABLE,
            Map.of("sign", String.format(Locale.ROOT, "U+%04X", sign)));
      }
    }
  }

  private static boolean printable(int sign) {
    return sign >= ' ' && sign <= '~'
        || sign == '\n'
        || sign == '\r'
        || sign == '\t'
        || sign == 0x85
        || sign >= 0xA0 && sign <= 0xD7FF
        || sign >= 0xE000 && sign <= 0xFFFD
        || sign >= 0x10000;
  }
}
