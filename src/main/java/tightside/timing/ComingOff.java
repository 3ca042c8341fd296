package tightside.timing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoublePredicate;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Face;
import tightside.drive.LiftedLoop;
import tightside.geometry.ToothHeights;

/**
 * Sprockets that have left their noses and move together until one of them comes out of the chain.
 *
 * @param place of the one that comes out
 * @param moving places of all that move
 * @param way the unit vector in which they move
 * @param bowMm chain that the bow takes
 */
record ComingOff(
    HoldBack hold, int place, Set<Integer> moving, Vector2D way, ToothHeights teeth, double bowMm) {

  /** Steps in which a move is searched. */
  private static final int STEPS = 200;

  static ComingOff of(
      HoldBack hold, int place, SlideOff slide, Optional<Vector2D> direction, ToothHeights teeth) {
    Set<Integer> moving = new HashSet<>(Set.of(place));
    slide.shafts().forEach(s -> moving.add(SeatedTeeth.placeOf(hold.chain(), s)));
    if (moving.contains(0)) {
      throw new IllegalArgumentException("the driving sprocket stays on its shaft");
    }
    List<Vector2D> centres = hold.inPlace().centres();
    Vector2D way = direction.orElse(centres.get(place).vectorTo(centres.get(0))).normalize();
    return new ComingOff(hold, place, Set.copyOf(moving), way, teeth, slide.neededMm());
  }

  /** Chain that is missing with the sprocket moved so far and its teeth to be passed, mm. */
  double lackMm(double moveMm, Set<Integer> without) {
    Map<Integer, LiftedLoop.Lifted> lifted = new HashMap<>();
    for (int moved : moving) {
      double lift = moved == place ? teeth.liftMm() : 0;
      lifted.put(moved, new LiftedLoop.Lifted(way.multiply(moveMm), lift));
    }
    OptionalDouble pitches =
        LiftedLoop.seated(hold.inPlace(), hold.pitchMm(), hold.extensionMm())
            .lifting(lifted)
            .leavingOut(without)
            .pitches();
    return pitches.isEmpty()
        ? Double.POSITIVE_INFINITY
        : (pitches.getAsDouble() - hold.chain().links()) * hold.pitchMm() + bowMm;
  }

  /** The least move up to a limit with which nothing is missing. */
  OptionalDouble least(double limitMm, Set<Integer> without) {
    return firstWhere(limitMm, move -> lackMm(move, without) <= 0);
  }

  private static OptionalDouble firstWhere(double limitMm, DoublePredicate holds) {
    double before = 0;
    for (int i = 0; i <= STEPS; i++) {
      double here = limitMm * i / STEPS;
      if (holds.test(here)) {
        return OptionalDouble.of(i == 0 ? 0 : halved(before, here, holds));
      }
      before = here;
    }
    return OptionalDouble.empty();
  }

  private static double halved(double from, double to, DoublePredicate holds) {
    double low = from;
    double high = to;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (holds.test(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /** How far the sprocket can move before its teeth meet another's. */
  double roomMm() {
    return firstWhere(apartMm(0), move -> meets(move).isPresent()).orElse(apartMm(0));
  }

  private Optional<Integer> meets(double moveMm) {
    return hold.chain().sprocketPlaces().stream()
        .filter(other -> !moving.contains(other) && gapMm(other, moveMm) < gapMm(other, 0))
        .filter(other -> gapMm(other, moveMm) <= 0)
        .findFirst();
  }

  /** From tips to tips, mm. */
  private double gapMm(int other, double moveMm) {
    Vector2D at = hold.inPlace().centres().get(place).add(way.multiply(moveMm));
    double otherTips = SeatedTeeth.at(hold.chain(), other).orElseThrow().meanTipDiameterMm();
    double tips = (teeth.meanTipDiameterMm() + otherTips) / 2;
    return at.distance(hold.inPlace().centres().get(other)) - tips;
  }

  /** From the sprocket's shaft to the driving one, mm. */
  private double apartMm(int driver) {
    List<Vector2D> centres = hold.inPlace().centres();
    return centres.get(place).distance(centres.get(driver));
  }

  /** What would have to be away for a move to free the teeth. */
  FreeTeeth.Keeper keeper() {
    if (least(apartMm(0), Set.of()).isPresent()) {
      int other = meets(roomMm() + apartMm(0) / STEPS).orElse(place);
      return new FreeTeeth.Keeper(
          FreeTeeth.Cause.NEIGHBOUR, hold.chain().sprocketAt(other).shaft());
    }
    for (int face = 0; face < hold.chain().route().size(); face++) {
      if (hold.chain().route().get(face) instanceof Face f
          && least(roomMm(), Set.of(face)).isPresent()) {
        return new FreeTeeth.Keeper(FreeTeeth.Cause.FACE, f.name());
      }
    }
    return new FreeTeeth.Keeper(FreeTeeth.Cause.SLACK, "");
  }
}
