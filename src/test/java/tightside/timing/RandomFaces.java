package tightside.timing;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Contact;
import tightside.drive.Guide;
import tightside.drive.Plunger;
import tightside.drive.Seen;
import tightside.drive.Shoe;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;

/**
 * Draws what rubs a straight run, or nearly does.
 *
 * @param from where the run begins
 * @param to where it ends
 * @param outward from the loop, a unit vector
 * @param plateMm the chain's plate height
 */
record RandomFaces(Random random, Vector2D from, Vector2D to, Vector2D outward, double plateMm) {

  /** A part of the run, from 0 to 1. */
  enum Slot {
    WHOLE(0.2, 0.8),
    EARLY(0.12, 0.45),
    LATE(0.55, 0.88);

    private final double low;
    private final double high;

    Slot(double low, double high) {
      this.low = low;
      this.high = high;
    }
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private Vector2D along() {
    return from.directionTo(to);
  }

  private double chordMm(Slot slot) {
    return (slot.high - slot.low) * from.distance(to);
  }

  private Vector2D base(Slot slot) {
    return from.lerp(to, (slot.low + slot.high) / 2);
  }

  private Vector2D towardsChain(Contact contact) {
    return contact == Contact.OUTSIDE ? outward.negate() : outward;
  }

  private Contact contact() {
    return random.nextInt(3) == 0 ? Contact.INSIDE : Contact.OUTSIDE;
  }

  Guide guide(String name, Slot slot) {
    Contact contact = contact();
    return new Guide(name, contact, curve(slot, contact, between(-2, 7)), Seen.COVER_OFF);
  }

  Tensioner tensioner(String name, Slot slot) {
    Contact contact = contact();
    FaceCurve curve = curve(slot, contact, between(-4, 2));
    return random.nextInt(4) == 0
        ? new Shoe(name, contact, curve, plunger(contact, 6, 16), Seen.COVER_OFF)
        : arm(name, slot, contact, curve);
  }

  private Arm arm(String name, Slot slot, Contact contact, FaceCurve curve) {
    int pivotEnd = random.nextBoolean() ? 1 : -1;
    DoubleFunction<Vector2D> behind =
        part ->
            base(slot)
                .add(along().multiply(pivotEnd * part * chordMm(slot)))
                .subtract(towardsChain(contact).multiply(plateMm / 2 + between(6, 22)));
    return new Arm(
        name,
        contact,
        behind.apply(between(0.48, 0.62)),
        curve,
        behind.apply(between(-0.45, 0)),
        plunger(contact, 10, 28),
        Seen.COVER_OFF);
  }

  private Plunger plunger(Contact contact, double leastTravel, double mostTravel) {
    return new Plunger(
        Bearing.of(towardsChain(contact)).plus(between(-14, 14)),
        between(leastTravel, mostTravel),
        random.nextBoolean() ? OptionalDouble.of(1.5) : OptionalDouble.empty());
  }

  /** An arc, or now and then a straight, that stands so far into the chain's way. */
  private FaceCurve curve(Slot slot, Contact contact, double intoMm) {
    double chord = chordMm(slot);
    double radius = random.nextInt(6) == 0 ? 1e6 : chord * between(0.8, 4);
    double tilt = Math.toRadians(between(-4, 4));
    Vector2D run = along().multiply(Math.cos(tilt)).add(outward.multiply(Math.sin(tilt)));
    Vector2D out = towardsChain(contact);
    Vector2D up = out.subtract(run.multiply(run.dot(out))).normalize();
    Vector2D top = base(slot).add(out.multiply(intoMm - plateMm / 2));
    DoubleFunction<Vector2D> point =
        s ->
            top.add(run.multiply(s * chord))
                .subtract(up.multiply(radius - Math.sqrt(radius * radius - s * chord * s * chord)));
    return new FaceCurve(point.apply(-0.5), point.apply(between(-0.15, 0.15)), point.apply(0.5));
  }
}
