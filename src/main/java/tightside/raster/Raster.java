package tightside.raster;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tightside.picture.Rgb;
import tightside.picture.Shape;

/**
 * Draws the shapes of a picture into pixels, in bands on as many cores as there are. Words are left
 * to those who have type to set.
 */
public final class Raster {

  /** So that no core waits for the one that has the most to draw. */
  private static final int BANDS = 4;

  private final List<Band> bands;
  private final Cuts cuts;
  private final Inked inked;
  private Tracer tracer = new Tracer(0, 0, 1);
  private double line = 1;
  private Brushes brushes = new Brushes(line);

  /**
   * @param pixels is drawn into, a row after the other from the top, alpha in the highest byte
   * @param width of a row
   * @param cuts shared with other rasters of the same picture
   */
  public Raster(int[] pixels, int width, Cuts cuts) {
    this.cuts = cuts;
    if (width < 1 || pixels.length % width != 0) {
      throw new IllegalArgumentException(pixels.length + " pixels are no rows of " + width);
    }
    inked = new Inked(width, pixels.length / width);
    bands =
        IntStream.range(0, BANDS).mapToObj(i -> surface(pixels, width, i)).map(Band::new).toList();
  }

  private static Surface surface(int[] pixels, int width, int band) {
    int rows = pixels.length / width;
    int from = rows * band / BANDS;
    int end = rows * (band + 1) / BANDS;
    return new Surface(pixels, width, from, end, new Inked(width, rows));
  }

  /**
   * Where the picture lies from now on.
   *
   * @param left pixels of the picture's x = 0
   * @param top pixels of the picture's y = 0, downward
   * @param scale pixels per millimetre
   * @param linePixels breadth of a plain line
   */
  public void lay(double left, double top, double scale, double linePixels) {
    tracer = new Tracer(left, top, scale);
    if (line != linePixels) {
      line = linePixels;
      brushes = new Brushes(line);
    }
  }

  /**
   * Draws shapes on bare paper.
   *
   * @return all that is not bare, and a little round it
   */
  public List<Area> paint(Rgb paper, List<Shape> shapes) {
    Scene scene = Scene.of(shapes, brushes, tracer, cuts);
    Stream<Band> each = bands.parallelStream();
    each.forEach(band -> band.paint(paper, scene));
    inked.clear();
    bands.forEach(band -> inked.add(band.inked()));
    return inked.areas();
  }
}
