package tightside.timing;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.LiftedLoop;
import tightside.geometry.ToothHeights;

/**
 * Whether a slack chain can ride over a tooth of a sprocket that stays on its shaft.
 *
 * <p>It can rise off all teeth at once, which takes chain for the larger arc. Or it passes tooth by
 * tooth: two links stand like a roof over one gap and the roof walks round, which takes one link
 * more in the wrap than its teeth. The chain takes what is cheaper. Neither way says where the
 * chain then lies: that is a wrong lay, with its own need of slack.
 *
 * @param liftMm that a roller has to rise to pass a tip
 * @param allAtOnceMm slack that it takes to rise off all teeth
 * @param toothByToothMm slack that it takes to pass tooth by tooth: a pitch
 * @param hasMm slack of the loop
 */
public record Climb(
    String shaft, double liftMm, double allAtOnceMm, double toothByToothMm, double hasMm) {

  /**
   * @param shaft of a sprocket on this chain
   * @return nothing where the teeth are not known, or no chain fits round their tips
   */
  public static Optional<Climb> of(HoldBack hold, String shaft) {
    int place = SeatedTeeth.placeOf(hold.chain(), shaft);
    OptionalDouble lift =
        SeatedTeeth.at(hold.chain(), place).stream().mapToDouble(ToothHeights::liftMm).findFirst();
    return lift.isEmpty() ? Optional.empty() : of(hold, shaft, place, lift.getAsDouble());
  }

  private static Optional<Climb> of(HoldBack hold, String shaft, int place, double lift) {
    OptionalDouble risen =
        LiftedLoop.seated(hold.inPlace(), hold.pitchMm(), hold.extensionMm())
            .lifting(Map.of(place, new LiftedLoop.Lifted(Vector2D.ZERO, lift)))
            .pitches();
    return risen.stream()
        .map(pitches -> (pitches - hold.path().pitches()) * hold.pitchMm())
        .mapToObj(more -> new Climb(shaft, lift, more, hold.pitchMm(), hold.slackMm()))
        .findFirst();
  }

  public double neededMm() {
    return Math.min(allAtOnceMm, toothByToothMm);
  }

  public boolean possible() {
    return hasMm >= neededMm();
  }
}
