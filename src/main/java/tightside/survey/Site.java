package tightside.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Audit;
import tightside.drive.Chain;
import tightside.drive.ChainInPlace;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.Finding;
import tightside.drive.Gearing;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;
import tightside.geometry.Rotation;

/**
 * A drive as it might stand: shafts and chains for some values of the unknowns, which need not make
 * a sound drive.
 *
 * @param extensionMm by chain that has a tensioner
 * @param paths by chain
 */
record Site(
    List<Shaft> shafts,
    List<Chain> chains,
    Gearing gearing,
    Map<String, Double> extensionMm,
    Map<String, Optional<SiteChain>> paths) {

  Chain chain(String name) {
    return chains.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  Vector2D centre(String shaft) {
    return shafts.stream().filter(s -> s.name().equals(shaft)).findFirst().orElseThrow().at();
  }

  /** Where a point stands, plungers fully pushed back, mm. */
  Vector2D point(SurveyPoint point) {
    if (point.spot() == Spot.CENTRE) {
      return centre(point.part());
    }
    Face face =
        chains.stream()
            .filter(c -> point.chain().isEmpty() || point.chain().get().equals(c.name()))
            .flatMap(c -> c.route().stream())
            .filter(e -> e instanceof Face f && f.name().equals(point.part()))
            .map(Face.class::cast)
            .findFirst()
            .orElseThrow();
    FaceCurve curve = face.curve();
    return switch (point.spot()) {
      case START -> curve.start();
      case MIDDLE -> curve.middle();
      case END -> curve.end();
      case PIVOT -> ((Arm) face).pivot();
      default -> ((Arm) face).pad();
    };
  }

  /** The bearing of a shaft's marked tooth on a chain. */
  Bearing mark(String chain, String shaft) {
    return chain(chain).sprocketOn(shaft).flatMap(Sprocket::mark).orElseThrow();
  }

  /** The path of a chain; nothing where a face is hollow toward it. */
  Optional<SiteChain> path(String name) {
    return paths.get(name);
  }

  /** Lays a chain; its runs are found when they are asked for. */
  Optional<SiteChain> laid(Chain chain, SiteChain.Strings strings) {
    List<Vector2D> centres =
        chain.route().stream()
            .map(e -> e instanceof Sprocket s ? centre(s.shaft()) : Vector2D.ZERO)
            .toList();
    List<Rotation> senses =
        IntStream.range(0, chain.route().size())
            .mapToObj(place -> gearing.senseAt(chain, place))
            .toList();
    Rotation travel = gearing.travel().get(chain.name());
    return SiteChain.of(
        new ChainInPlace(chain, centres, senses, travel),
        extensionMm.getOrDefault(chain.name(), 0.0),
        strings);
  }

  /** What keeps this from being a drive; nothing if it is one. */
  List<Finding> trouble(Drive like) {
    return Audit.of(like.rotation(), shafts, chains);
  }

  /**
   * The drive that this makes.
   *
   * @throws IllegalArgumentException if it makes none
   */
  Drive drive(Drive like) {
    return new Drive(like.name(), like.about(), like.rotation(), shafts, chains);
  }
}
