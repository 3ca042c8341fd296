package tightside.files;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody meant. */
final class NearMiss {

  private NearMiss() {}

  /** The nearest of the known words, if it is near enough to be meant. */
  static Optional<String> of(String word, Collection<String> known) {
    if (word.length() > 60) {
      return Optional.empty();
    }
    String plain = plain(word);
    String nearest = null;
    int least = Math.max(1, plain.length() / 3) + 1;
    for (String candidate : known) {
      int distance = distance(plain, plain(candidate));
      if (distance < least) {
        least = distance;
        nearest = candidate;
      }
    }
    return Optional.ofNullable(nearest);
  }

  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  /**
   * Letters to put in, take out, change or swap with their neighbour (Damerau 1964, restricted: no
   * letter is touched twice).
   */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, d, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(String a, String b, int[][] d, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
