package tightside.picture;

/** Numbers as text, the same in every locale, and fast: a picture has many. */
final class Decimals {

  private Decimals() {}

  /** With exactly so many decimals (0 to 6), rounded half up, never minus zero. */
  static String fixed(double value, int decimals) {
    long scale = scale(decimals);
    long scaled = Math.round(Math.abs(value) * scale);
    StringBuilder text = new StringBuilder();
    if (value < 0 && scaled > 0) {
      text.append('-');
    }
    text.append(scaled / scale);
    if (decimals > 0) {
      text.append('.').append(Long.toString(scale + scaled % scale), 1, decimals + 1);
    }
    return text.toString();
  }

  /** With so many decimals at most: no zero stands at the end. */
  static void append(StringBuilder text, double value, int decimals) {
    long scale = scale(decimals);
    long scaled = Math.round(Math.abs(value) * scale);
    if (value < 0 && scaled > 0) {
      text.append('-');
    }
    text.append(scaled / scale);
    long rest = scaled % scale;
    if (rest > 0) {
      text.append('.');
      for (long digit = scale / 10; rest > 0; digit /= 10) {
        text.append(rest / digit);
        rest %= digit;
      }
    }
  }

  private static long scale(int decimals) {
    long scale = 1;
    for (int i = 0; i < decimals; i++) {
      scale *= 10;
    }
    return scale;
  }
}
