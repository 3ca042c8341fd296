package tightside.picture;

import java.util.Optional;

/**
 * What a picture shows besides the drive itself.
 *
 * @param labels counts, names and errors in words
 * @param notes what is to be said of a chain or the drive as a whole, under it
 * @param legend what the signs mean
 * @param front the chain to be drawn in front; nothing leaves that to the picture
 * @param textScale size of all words; 1 suits a picture as large as a page
 */
public record PictureOptions(
    boolean labels, boolean notes, boolean legend, Optional<String> front, double textScale) {

  public PictureOptions {
    if (!(textScale > 0)) {
      throw new IllegalArgumentException("words need a size, not " + textScale);
    }
  }

  /** Everything. */
  public static PictureOptions full() {
    return new PictureOptions(true, true, true, Optional.empty(), 1);
  }

  /** The drive with its labels, for those who say all else beside it. */
  public static PictureOptions labelled(Optional<String> front, double textScale) {
    return new PictureOptions(true, false, false, front, textScale);
  }

  public PictureOptions withFront(String chain) {
    return new PictureOptions(labels, notes, legend, Optional.of(chain), textScale);
  }

  public PictureOptions withoutWords() {
    return new PictureOptions(false, false, false, front, textScale);
  }
}
