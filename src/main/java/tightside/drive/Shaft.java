package tightside.drive;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A shaft and where it stands.
 *
 * @param place its centre, mm; nothing in a drive that is counted only
 */
public record Shaft(String name, Role role, Optional<Vector2D> place) {

  public Shaft {
    Names.refuseNonsense("shaft", name);
    if (place.isPresent()) {
      Limits.POSITION_MM.refuseOutside("at x", place.get().getX());
      Limits.POSITION_MM.refuseOutside("at y", place.get().getY());
    }
  }

  public Shaft(String name, Role role, Vector2D at) {
    this(name, role, Optional.of(at));
  }

  /** A shaft of which nobody knows where it stands. */
  public static Shaft unplaced(String name, Role role) {
    return new Shaft(name, role, Optional.empty());
  }

  /**
   * Its centre, mm.
   *
   * @throws IllegalStateException in a drive that is counted only; ask {@link Drive#countedOnly}
   */
  public Vector2D at() {
    return place.orElseThrow(() -> new IllegalStateException(name + " has no place"));
  }
}
