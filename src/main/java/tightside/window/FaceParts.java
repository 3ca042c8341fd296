package tightside.window;

import java.util.function.UnaryOperator;
import tightside.drive.Arm;
import tightside.drive.Contact;
import tightside.drive.Face;
import tightside.drive.Guide;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Shoe;

/** Faces with one thing about them changed. */
final class FaceParts {

  private FaceParts() {}

  static Face withContact(Face face, Contact contact) {
    return with(face, contact, face.seen(), UnaryOperator.identity());
  }

  static Face withSeen(Face face, Seen seen) {
    return with(face, face.contact(), seen, UnaryOperator.identity());
  }

  static Face withPlunger(RouteEntry tensioner, UnaryOperator<Plunger> change) {
    Face face = (Face) tensioner;
    return with(face, face.contact(), face.seen(), change);
  }

  private static Face with(Face face, Contact contact, Seen seen, UnaryOperator<Plunger> change) {
    if (face instanceof Arm arm) {
      return new Arm(
          arm.name(),
          contact,
          arm.pivot(),
          arm.curve(),
          arm.pad(),
          change.apply(arm.plunger()),
          seen);
    }
    return face instanceof Shoe shoe
        ? new Shoe(shoe.name(), contact, shoe.curve(), change.apply(shoe.plunger()), seen)
        : new Guide(face.name(), contact, face.curve(), seen);
  }
}
