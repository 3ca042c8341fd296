package tightside.drive;

import java.util.Optional;
import java.util.OptionalDouble;
import tightside.geometry.Bearing;

/**
 * A sprocket on a chain's route.
 *
 * @param shaft name of the shaft that carries it
 * @param marked whether it bears a mark; without one it carries the chain but starts no strand
 * @param mark bearing of the marked tooth at the reference position; with a mark, always known in a
 *     drive with geometry
 * @param seen what it takes to see the mark
 * @param strandSeen what it takes to see the strand that leaves this sprocket
 * @param straightMm length of the free run from this sprocket to the next, mm, where it was
 *     measured in a drive that is counted only
 */
public record Sprocket(
    String shaft,
    int teeth,
    boolean marked,
    Optional<Bearing> mark,
    Contact contact,
    Joint joint,
    Seen seen,
    Seen strandSeen,
    OptionalDouble straightMm)
    implements RouteEntry {

  public Sprocket {
    Limits.TEETH.refuseOutside("teeth", teeth);
    if (mark.isPresent() && !marked) {
      throw new IllegalArgumentException("a mark that is not there has no bearing");
    }
    straightMm.ifPresent(mm -> Limits.STRAIGHT_MM.refuseOutside("straight", mm));
  }

  /** A sprocket of a drive with geometry, marked where its mark has a bearing. */
  public Sprocket(
      String shaft,
      int teeth,
      Optional<Bearing> mark,
      Contact contact,
      Joint joint,
      Seen seen,
      Seen strandSeen) {
    this(
        shaft,
        teeth,
        mark.isPresent(),
        mark,
        contact,
        joint,
        seen,
        strandSeen,
        OptionalDouble.empty());
  }

  /** A marked sprocket inside the loop, on a dowel, of a drive that is counted only. */
  public static Sprocket counted(String shaft, int teeth) {
    return new Sprocket(
        shaft,
        teeth,
        true,
        Optional.empty(),
        Contact.INSIDE,
        Joint.DOWEL,
        Seen.COVER_OFF,
        Seen.COVER_OFF,
        OptionalDouble.empty());
  }

  /** A sprocket inside the loop, on a dowel, to be seen with the cover off. */
  public static Sprocket inside(String shaft, int teeth, Bearing mark) {
    return new Sprocket(
        shaft,
        teeth,
        Optional.of(mark),
        Contact.INSIDE,
        Joint.DOWEL,
        Seen.COVER_OFF,
        Seen.COVER_OFF);
  }

  public Sprocket withContact(Contact other) {
    return new Sprocket(shaft, teeth, marked, mark, other, joint, seen, strandSeen, straightMm);
  }

  /** With its mark at a bearing, or without one. */
  public Sprocket withMark(Optional<Bearing> other) {
    return new Sprocket(
        shaft, teeth, other.isPresent(), other, contact, joint, seen, strandSeen, straightMm);
  }

  /** With a mark of which no bearing is known, or without one. */
  public Sprocket marked(boolean other) {
    return new Sprocket(
        shaft, teeth, other, Optional.empty(), contact, joint, seen, strandSeen, straightMm);
  }

  /** With the free run after it measured, mm, or not. */
  public Sprocket withStraight(OptionalDouble other) {
    return new Sprocket(shaft, teeth, marked, mark, contact, joint, seen, strandSeen, other);
  }

  public Sprocket withShaft(String other) {
    return new Sprocket(other, teeth, marked, mark, contact, joint, seen, strandSeen, straightMm);
  }

  public Sprocket withTeeth(int other) {
    return new Sprocket(shaft, other, marked, mark, contact, joint, seen, strandSeen, straightMm);
  }

  public Sprocket withJoint(Joint other) {
    return new Sprocket(shaft, teeth, marked, mark, contact, other, seen, strandSeen, straightMm);
  }

  public Sprocket withSeen(Seen other) {
    return new Sprocket(shaft, teeth, marked, mark, contact, joint, other, strandSeen, straightMm);
  }

  public Sprocket withStrandSeen(Seen other) {
    return new Sprocket(shaft, teeth, marked, mark, contact, joint, seen, other, straightMm);
  }
}
