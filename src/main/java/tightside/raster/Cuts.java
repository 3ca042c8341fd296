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

  private final long room;
  private final Map<Kind, Cut> cuts = new HashMap<>();
  private long kept;
  private double scale;
  private boolean settled;

  public Cuts() {
    this(ROOM);
  }

  /**
   * @param room for stamps, pixels
   */
  Cuts(long room) {
    this.room = room;
  }

  /** A picture of a scale is drawn: one that had another before is not worth its stamps yet. */
  synchronized void begin(double pixelsPerMm) {
    settled = pixelsPerMm == scale;
    if (!settled) {
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
    return Cut.of(points, kind.stencil().closed(), kind.breadth(), kind.colours());
  }

  /** Whether another stamp is worth while. Asked by all bands at once. */
  synchronized boolean room() {
    return settled && kept < room;
  }

  synchronized void kept(Stamp stamp) {
    kept += stamp.pixels();
  }
}
