package tightside.drive;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Outline;
import tightside.geometry.PitchCircle;
import tightside.geometry.Rotation;

/**
 * A chain among its shafts: its route as outlines that a string can be laid round.
 *
 * @param centres by place on the route; where a shaft stands, or the origin for a face
 * @param senses by place on the route: the way the chain turns there
 * @param travel the way the chain runs round its loop
 */
public record ChainInPlace(
    Chain chain, List<Vector2D> centres, List<Rotation> senses, Rotation travel) {

  public ChainInPlace {
    centres = List.copyOf(centres);
    senses = List.copyOf(senses);
  }

  static ChainInPlace of(Chain chain, List<Shaft> shafts, Gearing gearing) {
    Map<String, Shaft> byName =
        shafts.stream().collect(Collectors.toMap(Shaft::name, Function.identity()));
    List<Vector2D> centres =
        chain.route().stream()
            .map(e -> e instanceof Sprocket s ? byName.get(s.shaft()).at() : Vector2D.ZERO)
            .toList();
    List<Rotation> senses =
        IntStream.range(0, chain.route().size())
            .mapToObj(place -> gearing.senseAt(chain, place))
            .toList();
    return new ChainInPlace(chain, centres, senses, gearing.travel().get(chain.name()));
  }

  /** The pitch circle of a sprocket, with the way the chain turns round it. */
  public OrientedCircle pitchCircle(int place, double pitchMm) {
    PitchCircle circle = new PitchCircle(chain.sprocketAt(place).teeth(), pitchMm);
    return new OrientedCircle(centres.get(place), circle.radiusMm(), senses.get(place));
  }

  /**
   * What the pitch line meets at a place of the route.
   *
   * @param extensionMm how far the tensioner's plunger is out
   */
  public Outline outline(int place, double pitchMm, double extensionMm) {
    RouteEntry entry = chain.route().get(place);
    if (entry instanceof Sprocket) {
      return Outline.of(pitchCircle(place, pitchMm));
    }
    Face face = (Face) entry;
    double standOff = chain.plateHeightMm() / 2;
    return (face instanceof Tensioner tensioner ? tensioner.curveAt(extensionMm) : face.curve())
        .outline(standOff, senses.get(place));
  }
}
