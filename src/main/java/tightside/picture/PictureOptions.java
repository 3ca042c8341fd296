package tightside.picture;

import java.util.Optional;

/**
 * What a picture shows besides the drive itself.
 *
 * @param labels counts, names and errors in words
 * @param legend what the signs mean
 * @param front the chain to be drawn in front; nothing leaves that to the picture
 */
public record PictureOptions(boolean labels, boolean legend, Optional<String> front) {

  /** Everything. */
  public static PictureOptions full() {
    return new PictureOptions(true, true, Optional.empty());
  }

  public PictureOptions withFront(String chain) {
    return new PictureOptions(labels, legend, Optional.of(chain));
  }

  public PictureOptions withoutWords() {
    return new PictureOptions(false, false, front);
  }
}
