package tightside.picture;

import java.util.Map;
import java.util.Optional;
import tightside.drive.Seen;
import tightside.timing.Seat;

/**
 * What a picture shows besides the drive itself.
 *
 * @param labels counts, names and errors in words
 * @param notes what is to be said of a chain or the drive as a whole, under it
 * @param legend what the signs mean
 * @param front the chain to be drawn in front; nothing leaves that to the picture
 * @param caution what must be known of all that is shown, such as that it is only measured
 * @param textScale size of all words; 1 suits a picture as large as a page
 * @param painted teeth by which sprockets sat off when the links under their marks were painted
 * @param access what a person can see by: all else is veiled; nothing veils nothing
 */
public record PictureOptions(
    boolean labels,
    boolean notes,
    boolean legend,
    Optional<String> front,
    Optional<String> caution,
    double textScale,
    Map<Seat, Integer> painted,
    Optional<Seen> access) {

  public PictureOptions {
    painted = Map.copyOf(painted);
    if (!(textScale > 0)) {
      throw new IllegalArgumentException("words need a size, not " + textScale);
    }
  }

  /** Everything. */
  public static PictureOptions full() {
    return new PictureOptions(
        true, true, true, Optional.empty(), Optional.empty(), 1, Map.of(), Optional.empty());
  }

  /** The drive with its labels, for those who say all else beside it. */
  public static PictureOptions labelled(Optional<String> front, double textScale) {
    return new PictureOptions(
        true, false, false, front, Optional.empty(), textScale, Map.of(), Optional.empty());
  }

  public PictureOptions withFront(String chain) {
    return new PictureOptions(
        labels, notes, legend, Optional.of(chain), caution, textScale, painted, access);
  }

  public PictureOptions withCaution(Optional<String> words) {
    return new PictureOptions(labels, notes, legend, front, words, textScale, painted, access);
  }

  public PictureOptions withoutWords() {
    return new PictureOptions(
        false, false, false, front, Optional.empty(), textScale, painted, access);
  }

  public PictureOptions paintedWith(Map<Seat, Integer> reseats) {
    return new PictureOptions(labels, notes, legend, front, caution, textScale, reseats, access);
  }

  public PictureOptions seenWith(Seen cover) {
    return new PictureOptions(
        labels, notes, legend, front, caution, textScale, painted, Optional.of(cover));
  }
}
