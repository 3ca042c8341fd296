package tightside.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Finding.Id;
import tightside.geometry.FaceCurve;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Rotation;
import tightside.geometry.Tangent;
import tightside.geometry.Tolerance;

/** Whether every sprocket has room, and every face and arm can do its work. */
final class FaceAudit {

  private FaceAudit() {}

  static List<Finding> of(Rotation rotation, List<Shaft> shafts, List<Chain> chains) {
    String crank =
        shafts.stream().filter(s -> s.role() == Role.CRANKSHAFT).findFirst().orElseThrow().name();
    Gearing gearing = Gearing.from(crank, rotation, chains);
    List<Finding> findings = new ArrayList<>();
    for (Chain chain : chains) {
      ChainInPlace inPlace = ChainInPlace.of(chain, shafts, gearing);
      findings.addAll(overlaps(inPlace));
      for (int place = 0; place < chain.route().size(); place++) {
        if (chain.route().get(place) instanceof Face face) {
          findings.addAll(face(inPlace, place, face));
        }
      }
    }
    return findings;
  }

  private static List<Finding> overlaps(ChainInPlace inPlace) {
    List<Finding> findings = new ArrayList<>();
    Chain chain = inPlace.chain();
    List<Integer> places = chain.sprocketPlaces();
    for (int i = 0; i < places.size(); i++) {
      for (int j = i + 1; j < places.size(); j++) {
        OrientedCircle a = inPlace.pitchCircle(places.get(i), chain.pitchMm());
        OrientedCircle b = inPlace.pitchCircle(places.get(j), chain.pitchMm());
        double apart = a.centre().distance(b.centre());
        if (apart < a.radiusMm() + b.radiusMm()) {
          findings.add(
              new Finding(
                  Id.SPROCKETS_OVERLAP,
                  Part.route(chain.name(), places.get(j)),
                  Map.of(
                      "first",
                      chain.sprocketAt(places.get(i)).shaft(),
                      "second",
                      chain.sprocketAt(places.get(j)).shaft(),
                      "apart",
                      apart,
                      "least",
                      a.radiusMm() + b.radiusMm())));
        }
      }
    }
    return findings;
  }

  private static List<Finding> face(ChainInPlace inPlace, int place, Face face) {
    List<Finding> findings = new ArrayList<>();
    Chain chain = inPlace.chain();
    Part part = Part.route(chain.name(), place);
    FaceCurve curve = face.curve();
    Rotation sense = inPlace.senses().get(place);
    if (middleAstray(curve)) {
      return List.of(
          new Finding(Id.FACE_MIDDLE_ASTRAY, part.at("face"), Map.of("face", face.name())));
    }
    if (againstTravel(inPlace, place, curve)) {
      findings.add(new Finding(Id.FACE_BACKWARDS, part.at("face"), Map.of("face", face.name())));
    } else if (curve.bulge().isPresent() && curve.bulge().get() != sense) {
      findings.add(
          new Finding(
              Id.FACE_HOLLOW,
              part.at("face"),
              Map.of("face", face.name(), "depth", Math.abs(curve.bulgeMm()))));
    }
    if (!curve.straight()) {
      double radius = curve.centre().distance(curve.middle()) + chain.plateHeightMm() / 2;
      if (radius <= chain.pitchMm() / 2) {
        findings.add(
            new Finding(
                Id.FACE_TOO_TIGHT,
                part.at("face"),
                Map.of("face", face.name(), "radius", radius, "least", chain.pitchMm() / 2)));
      }
    }
    if (face instanceof Arm arm) {
      findings.addAll(arm(part.at("plunger"), arm));
    }
    return findings;
  }

  /**
   * Whether the middle stands elsewhere than between the ends: it then sees them under a right
   * angle or less, and the arc would be half a circle or more (Thales).
   */
  private static boolean middleAstray(FaceCurve curve) {
    return curve.middle().vectorTo(curve.start()).dot(curve.middle().vectorTo(curve.end())) >= 0;
  }

  /** Whether the face is listed against the way the chain runs from the sprocket before it. */
  private static boolean againstTravel(ChainInPlace inPlace, int place, FaceCurve curve) {
    Chain chain = inPlace.chain();
    List<Integer> places = chain.sprocketPlaces();
    int before = places.stream().filter(p -> p < place).reduce((a, b) -> b).orElseThrow();
    int after = places.stream().filter(p -> p > place).findFirst().orElse(places.get(0));
    Optional<Tangent> run =
        Tangent.between(
            inPlace.pitchCircle(before, chain.pitchMm()),
            inPlace.pitchCircle(after, chain.pitchMm()));
    return run.isPresent()
        && curve.start().vectorTo(curve.end()).dot(run.get().heading().direction()) < 0;
  }

  private static List<Finding> arm(Part part, Arm arm) {
    double most = arm.turningPointMm();
    if (most <= Tolerance.TOUCH.value() || arm.inLine()) {
      return List.of(new Finding(Id.ARM_CANNOT_MOVE, part, Map.of("arm", arm.name())));
    }
    if (arm.plunger().travelMm() > most) {
      return List.of(
          new Finding(
              Id.ARM_TURNS_BACK,
              part.at("travel"),
              Map.of("arm", arm.name(), "travel", arm.plunger().travelMm(), "most", most)));
    }
    return List.of();
  }
}
