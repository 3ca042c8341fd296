package tightside.drive;

import java.util.Optional;
import tightside.geometry.Bearing;

/**
 * A sprocket on a chain's route.
 *
 * @param shaft name of the shaft that carries it
 * @param mark bearing of the marked tooth at the reference position; without one the sprocket
 *     carries the chain but starts no strand
 * @param seen what it takes to see the mark
 * @param strandSeen what it takes to see the strand that leaves this sprocket
 */
public record Sprocket(
    String shaft,
    int teeth,
    Optional<Bearing> mark,
    Contact contact,
    Joint joint,
    Seen seen,
    Seen strandSeen)
    implements RouteEntry {

  public Sprocket {
    Limits.TEETH.refuseOutside("teeth", teeth);
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
    return new Sprocket(shaft, teeth, mark, other, joint, seen, strandSeen);
  }

  public Sprocket withMark(Optional<Bearing> other) {
    return new Sprocket(shaft, teeth, other, contact, joint, seen, strandSeen);
  }

  public Sprocket withShaft(String other) {
    return new Sprocket(other, teeth, mark, contact, joint, seen, strandSeen);
  }

  public Sprocket withTeeth(int other) {
    return new Sprocket(shaft, other, mark, contact, joint, seen, strandSeen);
  }

  public Sprocket withJoint(Joint other) {
    return new Sprocket(shaft, teeth, mark, contact, other, seen, strandSeen);
  }

  public Sprocket withSeen(Seen other) {
    return new Sprocket(shaft, teeth, mark, contact, joint, other, strandSeen);
  }

  public Sprocket withStrandSeen(Seen other) {
    return new Sprocket(shaft, teeth, mark, contact, joint, seen, other);
  }
}
