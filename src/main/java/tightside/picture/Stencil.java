package tightside.picture;

import java.util.List;
import tightside.geometry.Curve;

/**
 * The outline that many equal parts of a picture share, the plates of a chain or the teeth of a
 * sprocket: lines and arcs about its own origin, mm, each beginning where the one before it ends.
 *
 * @param closed whether its end is joined to its beginning
 */
public record Stencil(List<Curve> curves, boolean closed) {

  public Stencil {
    curves = List.copyOf(curves);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a stencil needs a piece at least");
    }
  }
}
