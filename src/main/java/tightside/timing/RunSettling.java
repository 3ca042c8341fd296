package tightside.timing;

import java.util.List;
import java.util.OptionalDouble;
import tightside.drive.Chain;

/**
 * How a chain settles, from the lengths of its free runs alone.
 *
 * <p>On a sprocket every link sits in its tooth, and the pitch circle grows with the mean pitch:
 * the wrapped part keeps its teeth, however worn the chain. A free run of length L held L / p
 * pitches when new and holds L / (p (1 + s)) with a stretch of s, so L / p x s / (1 + s) pitches
 * have moved from the run on to the sprocket at its far end, and turn it by as many teeth: by L s /
 * R, with R = z p / 2 pi its pitch radius but for a part in a thousand. Towards the driving
 * sprocket they are lost and the shaft falls behind; the runs between it and the driving sprocket
 * add up.
 *
 * <p>Left out: as the pitch circles grow, a run between unequal sprockets swings and shortens a
 * little. To first order that takes the share (difference of the pitch radii / L)^2 from the
 * result; for sprockets on either side of the chain, (sum of the pitch radii / L)^2. A face that
 * bends a run only asks that L be taken along the chain.
 *
 * @param stretchPercent of the chain
 */
record RunSettling(MarkedRoute route, double stretchPercent) implements Settling {

  @Override
  public OptionalDouble degreesAhead(int place) {
    Chain chain = route.chain();
    List<Integer> places = chain.sprocketPlaces();
    int at = places.indexOf(place);
    boolean beyondSlack = place > route.slackAfter();
    OptionalDouble lengthMm = beyondSlack ? lengthMm(at, places.size()) : lengthMm(0, at);
    if (stretchPercent == 0) {
      return OptionalDouble.of(0);
    }
    if (lengthMm.isEmpty() || chain.size().pitchMm().isEmpty()) {
      return OptionalDouble.empty();
    }
    double share = stretchPercent / (100 + stretchPercent);
    double teeth = lengthMm.getAsDouble() / chain.pitchMm() * share;
    return OptionalDouble.of(
        (beyondSlack ? -teeth : teeth) * 360 / chain.sprocketAt(place).teeth());
  }

  /** The free runs from one sprocket of the route to another, mm; nothing if one is not known. */
  private OptionalDouble lengthMm(int from, int to) {
    double lengthMm = 0;
    for (int i = from; i < to; i++) {
      OptionalDouble run = route.chain().sprockets().get(i).straightMm();
      if (run.isEmpty()) {
        return OptionalDouble.empty();
      }
      lengthMm += run.getAsDouble();
    }
    return OptionalDouble.of(lengthMm);
  }

  /** What the slack side takes up is not known; its links stay. */
  @Override
  public double grownPitches() {
    return 0;
  }
}
