package tightside.timing;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.geometry.Rotation;
import tightside.second.Plan;
import tightside.second.Spot;

/** Tells the second solver of a drive, in its own plain numbers. */
final class Plans {

  private Plans() {}

  static Plan of(Drive drive) {
    return new Plan(
        drive.rotation() == Rotation.CLOCKWISE,
        drive.crankshaft().name(),
        drive.chains().stream().map(chain -> loop(drive, chain)).toList());
  }

  private static Plan.Loop loop(Drive drive, Chain chain) {
    return new Plan.Loop(
        chain.name(),
        chain.pitchMm(),
        chain.links(),
        chain.plateHeightMm(),
        chain.route().stream().map(entry -> item(drive, entry)).toList());
  }

  private static Plan.Item item(Drive drive, RouteEntry entry) {
    boolean outside = entry.contact() == Contact.OUTSIDE;
    if (entry instanceof Sprocket sprocket) {
      return new Plan.Wheel(
          sprocket.shaft(),
          spot(drive.shaft(sprocket.shaft()).orElseThrow().at()),
          sprocket.teeth(),
          sprocket.mark().stream().mapToDouble(mark -> mark.degrees()).findFirst(),
          outside);
    }
    Face face = (Face) entry;
    return new Plan.Rub(
        spot(face.curve().start()),
        spot(face.curve().middle()),
        spot(face.curve().end()),
        outside,
        push(face));
  }

  private static Optional<Plan.Push> push(Face face) {
    if (face instanceof Arm arm) {
      return Optional.of(
          push(arm.plunger(), Optional.of(new Plan.Arm(spot(arm.pivot()), spot(arm.pad())))));
    }
    return face instanceof Shoe shoe
        ? Optional.of(push(shoe.plunger(), Optional.empty()))
        : Optional.empty();
  }

  private static Plan.Push push(Plunger plunger, Optional<Plan.Arm> arm) {
    return new Plan.Push(arm, plunger.bearing().degrees(), plunger.travelMm());
  }

  private static Spot spot(Vector2D point) {
    return new Spot(point.getX(), point.getY());
  }
}
