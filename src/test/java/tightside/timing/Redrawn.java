package tightside.timing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Guide;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;

/**
 * The same drive drawn otherwise.
 *
 * @param point where a point goes
 * @param bearing where a bearing goes
 * @param scale by which lengths grow
 * @param mirrored whether what turned clockwise now turns counterclockwise
 */
record Redrawn(
    UnaryOperator<Vector2D> point, UnaryOperator<Bearing> bearing, double scale, boolean mirrored) {

  /** Seen from the back. */
  static Redrawn mirror() {
    return new Redrawn(
        p -> Vector2D.of(-p.getX(), p.getY()), b -> new Bearing(-b.degrees()), 1, true);
  }

  /** Turned clockwise round the origin, made larger, and shifted. */
  static Redrawn similar(double clockwiseDegrees, double scale, Vector2D shift) {
    double cos = Math.cos(Math.toRadians(clockwiseDegrees));
    double sin = Math.sin(Math.toRadians(clockwiseDegrees));
    return new Redrawn(
        p ->
            Vector2D.of(p.getX() * cos + p.getY() * sin, p.getY() * cos - p.getX() * sin)
                .multiply(scale)
                .add(shift),
        b -> b.plus(clockwiseDegrees),
        scale,
        false);
  }

  Drive drive(Drive drive) {
    return new Drive(
        drive.name() + ", redrawn",
        drive.about(),
        mirrored ? drive.rotation().opposite() : drive.rotation(),
        drive.shafts().stream().map(this::shaft).toList(),
        drive.chains().stream().map(this::chain).toList());
  }

  private Shaft shaft(Shaft shaft) {
    return new Shaft(shaft.name(), shaft.role(), point.apply(shaft.at()));
  }

  private Chain chain(Chain chain) {
    List<RouteEntry> route = chain.route().stream().map(this::entry).toList();
    return new Chain(
        chain.name(),
        chain.kind(),
        chain.pitchMm() * scale,
        chain.links(),
        chain.plateHeightMm() * scale,
        chain.rollerDiameterMm() * scale,
        route);
  }

  private RouteEntry entry(RouteEntry entry) {
    if (entry instanceof Sprocket sprocket) {
      return sprocket.withMark(sprocket.mark().map(bearing));
    }
    if (entry instanceof Guide guide) {
      return new Guide(guide.name(), guide.contact(), curve(guide.curve()), guide.seen());
    }
    if (entry instanceof Shoe shoe) {
      return new Shoe(
          shoe.name(), shoe.contact(), curve(shoe.curve()), plunger(shoe.plunger()), shoe.seen());
    }
    Arm arm = (Arm) entry;
    return new Arm(
        arm.name(),
        arm.contact(),
        point.apply(arm.pivot()),
        curve(arm.curve()),
        point.apply(arm.pad()),
        plunger(arm.plunger()),
        arm.seen());
  }

  private FaceCurve curve(FaceCurve curve) {
    return curve.moved(point);
  }

  private Plunger plunger(Plunger plunger) {
    OptionalDouble step =
        plunger.stepMm().isPresent()
            ? OptionalDouble.of(plunger.stepMm().getAsDouble() * scale)
            : OptionalDouble.empty();
    return new Plunger(bearing.apply(plunger.bearing()), plunger.travelMm() * scale, step);
  }
}
