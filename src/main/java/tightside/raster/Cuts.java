package tightside.raster;

import java.util.HashMap;
import java.util.Map;
import tightside.picture.Stencil;

/**
 * The stencils of a picture at the size that it has. Rasters that draw the same picture by turns
 * may share them.
 */
public final class Cuts {

  /** So many pixels of stamps are kept, four bytes each. */
  private static final long ROOM = 8_000_000;

  private record Kind(Stencil stencil, double breadth, Surface.Rimmed colours) {}

  /**
   * More than a picture has: then most are of chains stretched otherwise, and will not come again.
   */
  private static final int MOST = 64;

  private final long room;
  private final Map<Kind, Cut> cuts = new HashMap<>();
  private long kept;
  private double scale;
  private int frame;

  public Cuts() {
    this(ROOM);
  }

  /**
   * @param room for stamps, pixels
   */
  Cuts(long room) {
    this.room = room;
  }

  /** A picture of a scale is drawn. */
  synchronized void begin(double pixelsPerMm) {
    frame++;
    if (pixelsPerMm != scale || cuts.size() > MOST || kept >= room) {
      scale = pixelsPerMm;
      cuts.clear();
      kept = 0;
    }
  }

  Cut of(Stencil stencil, Brushes.Brush brush) {
    Kind kind = new Kind(stencil, brush.breadth(), brush.rimmed().orElseThrow());
    return cuts.computeIfAbsent(kind, this::cut);
  }

  private Cut cut(Kind kind) {
    Points points = new Points();
    new Tracer(0, 0, scale).trace(kind.stencil().curves(), kind.stencil().closed(), points);
    return Cut.of(points, kind.stencil().closed(), kind.breadth(), kind.colours(), frame);
  }

  /**
   * Whether another stamp is worth while: not of what is here for the first time, while something
   * is drawn out or made larger. Asked by all bands at once.
   */
  synchronized boolean room(Cut cut) {
    return cut.since() < frame && kept < room;
  }

  synchronized void kept(Stamp stamp) {
    kept += stamp.pixels();
  }
}
