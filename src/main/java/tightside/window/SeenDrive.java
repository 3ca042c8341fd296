package tightside.window;

import java.util.Optional;
import tightside.lesson.LessonSheet;
import tightside.picture.Picture;

/**
 * The picture that a class may see. It does not move, so it is drawn once for a size of text.
 *
 * @param textScale of the names in it
 */
record SeenDrive(LessonSheet sheet, double textScale, Picture picture) {

  /** Ems that go into the height of a drive at scale 1. */
  private static final double EMS = 66;

  private static final double LARGEST = 2.5;

  /**
   * @param before what was drawn last; it is kept while it fits
   * @param emPixels size of the names
   * @param height of the room, pixels
   */
  static SeenDrive of(
      Optional<SeenDrive> before, LessonSheet sheet, double emPixels, double height) {
    double scale = Math.min(LARGEST, EMS * emPixels / height);
    return before
        .filter(b -> b.sheet() == sheet && b.textScale() == scale)
        .orElseGet(() -> new SeenDrive(sheet, scale, sheet.picture(scale)));
  }
}
