package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.Guide;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.geometry.FaceCurve;

/** A drive whose parts have moved: what wear of faces and a skimmed head make of it. */
final class ChangedDrive {

  private ChangedDrive() {}

  /** Every face that rubs the chain worn by so many mm; nothing where no drive is left. */
  static Optional<Drive> worn(Drive drive, Chain chain, double mm) {
    List<RouteEntry> route = new ArrayList<>();
    for (RouteEntry entry : chain.route()) {
      route.add(entry instanceof Face face && !face.curve().straight() ? worn(face, mm) : entry);
    }
    return built(drive, drive.shafts(), chain.withRoute(route));
  }

  /** The face, moved away from the chain: against the way in which it bulges. */
  private static RouteEntry worn(Face face, double mm) {
    FaceCurve curve = face.curve();
    Vector2D chord = curve.start().vectorTo(curve.end());
    Vector2D left = Vector2D.of(-chord.getY(), chord.getX()).normalize();
    Vector2D away = left.multiply(-Math.signum(curve.bulgeMm()) * mm);
    FaceCurve moved = curve.moved(point -> point.add(away));
    if (face instanceof Guide guide) {
      return new Guide(guide.name(), guide.contact(), moved, guide.seen());
    }
    if (face instanceof Arm arm) {
      return new Arm(
          arm.name(), arm.contact(), arm.pivot(), moved, arm.pad(), arm.plunger(), arm.seen());
    }
    Shoe shoe = (Shoe) face;
    return new Shoe(shoe.name(), shoe.contact(), moved, shoe.plunger(), shoe.seen());
  }

  /** The camshafts of a chain moved straight toward its driving shaft. */
  static Optional<Drive> nearer(Drive drive, Chain chain, double mm) {
    List<Shaft> camshafts =
        chain.sprockets().stream()
            .skip(1)
            .map(Sprocket::shaft)
            .flatMap(name -> drive.shaft(name).stream())
            .filter(s -> s.role() == Role.CAMSHAFT)
            .toList();
    if (camshafts.isEmpty()) {
      return Optional.empty();
    }
    Vector2D centre =
        camshafts.stream()
            .map(Shaft::at)
            .reduce(Vector2D.ZERO, Vector2D::add)
            .multiply(1.0 / camshafts.size());
    Vector2D driver = drive.shaft(chain.driver().shaft()).orElseThrow().at();
    Vector2D way = centre.vectorTo(driver).normalize().multiply(mm);
    List<Shaft> moved =
        drive.shafts().stream()
            .map(s -> camshafts.contains(s) ? new Shaft(s.name(), s.role(), s.at().add(way)) : s)
            .toList();
    return built(drive, moved, chain);
  }

  private static Optional<Drive> built(Drive drive, List<Shaft> shafts, Chain changed) {
    List<Chain> chains =
        drive.chains().stream().map(c -> c.name().equals(changed.name()) ? changed : c).toList();
    try {
      return Optional.of(new Drive(drive.name(), drive.about(), drive.rotation(), shafts, chains));
    } catch (IllegalArgumentException noDrive) {
      return Optional.empty();
    }
  }
}
