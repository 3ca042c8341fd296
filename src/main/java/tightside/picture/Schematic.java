package tightside.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.ChainInPlace;
import tightside.drive.ChainKind;
import tightside.drive.Drive;
import tightside.drive.RouteEntry;
import tightside.drive.Routing;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;
import tightside.timing.Strand;

/**
 * A drawable stand-in for a drive that is counted only: its sprockets, as large as their teeth ask
 * for, laid out in the order of the routes where they have room. Order, direction of rotation,
 * teeth, counts and angles are the drive's own; places, lengths and marks' bearings are made up,
 * and every picture of it says so.
 */
public final class Schematic {

  /** What has to stand in every schematic picture. */
  public static final String NOT_TO_SCALE = "Schematic: not to scale";

  /** One pitch for all chains, so that sprockets are as large as their teeth ask for. */
  static final double PITCH_MM = 8;

  private static final double PLATE_MM = 7;
  private static final double ROLLER_MM = 5;

  private Schematic() {}

  /** The drive itself if it has geometry, or else its stand-in. */
  public static Drive placed(Drive drive) {
    if (!drive.countedOnly()) {
      return drive;
    }
    Drive unmarked = standIn(drive, Map.of());
    return standIn(drive, marks(unmarked));
  }

  private static Drive standIn(Drive drive, Map<String, Map<String, Bearing>> marks) {
    Map<String, Vector2D> places = RingLayout.of(drive);
    List<Shaft> shafts =
        drive.shafts().stream()
            .map(s -> new Shaft(s.name(), s.role(), places.get(s.name())))
            .toList();
    List<Chain> chains =
        drive.chains().stream()
            .map(chain -> standIn(chain, marks.getOrDefault(chain.name(), Map.of())))
            .toList();
    return new Drive(drive.name(), drive.about(), drive.rotation(), shafts, chains);
  }

  private static Chain standIn(Chain chain, Map<String, Bearing> marks) {
    List<RouteEntry> route = new ArrayList<>();
    for (Sprocket sprocket : chain.sprockets()) {
      route.add(
          sprocket
              .withStraight(OptionalDouble.empty())
              .withMark(
                  sprocket.marked()
                      ? Optional.ofNullable(marks.get(sprocket.shaft()))
                      : Optional.empty())
              .withContact(RingLayout.contact(chain, sprocket)));
    }
    return new Chain(
        chain.name(), ChainKind.BUSH, PITCH_MM, chain.links(), PLATE_MM, ROLLER_MM, route);
  }

  /** In the middle of what the chain wraps, by chain and shaft. */
  private static Map<String, Map<String, Bearing>> marks(Drive placed) {
    Map<String, Map<String, Bearing>> marks = new HashMap<>();
    for (Chain chain : placed.chains()) {
      Map<String, Bearing> ofChain = new HashMap<>();
      ChainInPlace inPlace = placed.inPlace(chain);
      Optional<TautPath> path = path(inPlace);
      for (int place : chain.sprocketPlaces()) {
        Bearing mark =
            path.map(
                    p ->
                        p.arrivesAt(place)
                            .plus(p.wrap(place).degrees() / 2, inPlace.senses().get(place)))
                .orElse(new Bearing(0));
        ofChain.put(chain.sprocketAt(place).shaft(), mark);
      }
      marks.put(chain.name(), ofChain);
    }
    return marks;
  }

  private static Optional<TautPath> path(ChainInPlace inPlace) {
    return Routing.of(inPlace, PITCH_MM, 0) instanceof Routing.Routed routed
        ? Optional.of(routed.path())
        : Optional.empty();
  }

  /** What a solution says, said of the stand-in; the same solution for a drive with geometry. */
  static Solution over(Solution solution) {
    if (!solution.drive().countedOnly()) {
      return solution;
    }
    Drive placed = placed(solution.drive());
    List<ChainSolution> chains = new ArrayList<>();
    for (ChainSolution chain : solution.chains()) {
      Chain standIn = placed.chain(chain.chain().name()).orElseThrow();
      Routing routing = Routing.of(placed.inPlace(standIn), PITCH_MM, 0);
      ChainFit fit =
          routing instanceof Routing.Routed routed
              ? new ChainFit.Solved(routed.path(), OptionalDouble.empty(), 0)
              : (ChainFit) routing;
      chains.add(
          new ChainSolution(
              standIn,
              chain.travel(),
              fit,
              fit,
              Optional.empty(),
              List.of(),
              fit.path().isPresent() ? strands(chain) : List.of(),
              chain.realignCrankTurns(),
              chain.advancePitches()));
    }
    return new Solution(placed, solution.state(), chains, solution.shafts(), solution.unknowns());
  }

  /** The strands between sprockets that are numbered without what else stands on the route. */
  private static List<Strand> strands(ChainSolution chain) {
    List<Integer> places = chain.chain().sprocketPlaces();
    return chain.strands().stream()
        .map(
            s ->
                new Strand(
                    s.from(),
                    s.to(),
                    places.indexOf(s.fromPlace()),
                    places.indexOf(s.toPlace()),
                    s.measured(),
                    s.links(),
                    s.misfit(),
                    s.taut(),
                    s.seen()))
        .toList();
  }
}
