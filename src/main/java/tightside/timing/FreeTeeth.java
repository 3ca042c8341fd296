package tightside.timing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.ToothHeights;

/**
 * The second stage of taking a sprocket off: it has left its nose and moves, toward the driving
 * sprocket or another way, until the chain can be lifted over the tips of all its teeth.
 *
 * @param shaft of the sprocket that comes out of the chain
 * @param liftMm that a roller has to rise to pass a tip
 * @param standingNeedMm chain that is missing or over (below zero) to lift it with the sprocket
 *     still before its shaft
 * @param moveMm the least move that frees the teeth; nothing where none does
 * @param keeper what keeps it, where no move frees it
 */
public record FreeTeeth(
    String shaft,
    double liftMm,
    double standingNeedMm,
    OptionalDouble moveMm,
    Optional<Keeper> keeper) {

  /** What keeps a sprocket from coming out. */
  public enum Cause {
    /** The teeth of the sprocket beside it stand in the way. */
    NEIGHBOUR,
    /** A guide or the tensioner takes the chain that is wanted. */
    FACE,
    /** Too much chain is wanted, whatever stands in the way. */
    SLACK
  }

  /**
   * What keeps a sprocket.
   *
   * @param name of the shaft or the face; empty where it is the slack
   */
  public record Keeper(Cause cause, String name) {}

  /** Toward the driving sprocket, with no bow; nothing where the teeth are not known. */
  public static Optional<FreeTeeth> alone(HoldBack hold, String shaft) {
    return of(hold, shaft, new SlideOff(Set.of(shaft), 0, List.of(), true), Optional.empty());
  }

  /**
   * @param shaft of a sprocket on this chain other than the driving one
   * @param slide how the sprockets that move together, this one among them, have come off their
   *     noses; their bow stays
   * @param direction in which they move, as drawn; toward the driving sprocket unless given
   * @return nothing where the teeth are not known: a toothed chain
   */
  public static Optional<FreeTeeth> of(
      HoldBack hold, String shaft, SlideOff slide, Optional<Vector2D> direction) {
    if (!slide.shafts().contains(shaft)) {
      throw new IllegalArgumentException(shaft + " has not come off its nose");
    }
    int place = SeatedTeeth.placeOf(hold.chain(), shaft);
    Optional<ToothHeights> teeth = SeatedTeeth.at(hold.chain(), place);
    return teeth.map(
        heights -> of(ComingOff.of(hold, place, slide, direction, heights), shaft, heights));
  }

  private static FreeTeeth of(ComingOff coming, String shaft, ToothHeights heights) {
    OptionalDouble move = coming.least(coming.roomMm(), Set.of());
    return new FreeTeeth(
        shaft,
        heights.liftMm(),
        coming.lackMm(0, Set.of()),
        move,
        move.isPresent() ? Optional.empty() : Optional.of(coming.keeper()));
  }
}
