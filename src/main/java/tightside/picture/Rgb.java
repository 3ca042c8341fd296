package tightside.picture;

/**
 * A colour of the sRGB space.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Rgb(int red, int green, int blue) {

  public static Rgb of(int hex) {
    return new Rgb(hex >> 16 & 255, hex >> 8 & 255, hex & 255);
  }

  /** As a style sheet writes it: #rrggbb. */
  public String hex() {
    return "#" + twoDigits(red) + twoDigits(green) + twoDigits(blue);
  }

  private static String twoDigits(int value) {
    return Integer.toHexString(256 + value).substring(1);
  }

  /** So much of the way to another colour, 0 to 1. */
  public Rgb mixed(Rgb other, double share) {
    return new Rgb(
        between(red, other.red, share),
        between(green, other.green, share),
        between(blue, other.blue, share));
  }

  private static int between(int from, int to, double share) {
    return (int) Math.round(from + (to - from) * share);
  }

  /** Relative luminance, 0 to 1 (Web Content Accessibility Guidelines 2.1, 1.4.3). */
  public double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /** Contrast ratio, 1 to 21 (Web Content Accessibility Guidelines 2.1, 1.4.3). */
  public double contrast(Rgb other) {
    double lighter = Math.max(luminance(), other.luminance());
    double darker = Math.min(luminance(), other.luminance());
    return (lighter + 0.05) / (darker + 0.05);
  }
}
