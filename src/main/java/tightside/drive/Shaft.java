package tightside.drive;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A shaft and where it stands.
 *
 * @param at its centre, mm
 */
public record Shaft(String name, Role role, Vector2D at) {

  public Shaft {
    Names.refuseNonsense("shaft", name);
    Limits.POSITION_MM.refuseOutside("at x", at.getX());
    Limits.POSITION_MM.refuseOutside("at y", at.getY());
  }
}
