package tightside.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tightside.drive.Joint;
import tightside.drive.Sprocket;
import tightside.timing.FrictionJoint;
import tightside.timing.HoldBack;

/** A mistake where a sprocket meets its shaft, with every link where it belongs. */
public sealed interface JointMistake {

  String shaft();

  /**
   * A sprocket held by clamp alone was tightened while chain was slack.
   *
   * @param degreesPerMm error of the shaft, its own degrees, for one mm of slack left in the tight
   *     strands while tightening
   * @param mostDegrees the error if the whole slack of the held-back loop was left there
   */
  record TightenedSlack(String shaft, double degreesPerMm, double mostDegrees)
      implements JointMistake {}

  /**
   * A phaser was not at rest when it was fitted. Every link is right, and once it goes back to rest
   * the camshaft stands off by as much.
   *
   * @param mostDegrees its range, camshaft degrees; nothing where nobody said
   */
  record PhaserNotAtRest(String shaft, OptionalDouble mostDegrees) implements JointMistake {}

  /**
   * A camshaft with a phaser.
   *
   * @param rangeCrankDegrees how far it adjusts
   */
  record Phased(String shaft, OptionalDouble rangeCrankDegrees) {}

  /** Every such mistake on the driven, marked sprockets of a chain, in the order of its route. */
  static List<JointMistake> on(HoldBack hold, List<Phased> phasers) {
    List<JointMistake> mistakes = new ArrayList<>();
    List<Sprocket> driven = hold.chain().sprockets().stream().skip(1).toList();
    for (Sprocket sprocket : driven) {
      if (sprocket.joint() == Joint.FRICTION) {
        FrictionJoint joint = new FrictionJoint(sprocket.teeth(), hold.pitchMm());
        double most = joint.errorDegrees(Math.max(0, hold.slackMm()));
        mistakes.add(new TightenedSlack(sprocket.shaft(), joint.degreesPerMm(), most));
      }
      phasers.stream()
          .filter(p -> p.shaft().equals(sprocket.shaft()))
          .map(p -> new PhaserNotAtRest(p.shaft(), halved(p.rangeCrankDegrees())))
          .forEach(mistakes::add);
    }
    return mistakes;
  }

  /** A camshaft turns half as far as the crankshaft. */
  private static OptionalDouble halved(OptionalDouble crankDegrees) {
    return crankDegrees.isPresent()
        ? OptionalDouble.of(crankDegrees.getAsDouble() / 2)
        : crankDegrees;
  }
}
