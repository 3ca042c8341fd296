package tightside.window;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainInPlace;
import tightside.drive.Drive;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Rotation;
import tightside.picture.Schematic;
import tightside.timing.Seat;

/**
 * A sprocket as a hand finds it.
 *
 * @param radiusMm of its pitch circle, chain new
 * @param sense the way its shaft turns
 * @param crank whether it sits on the crankshaft
 */
record Wheel(
    Seat seat,
    Vector2D centre,
    double radiusMm,
    double pitchMm,
    int teeth,
    Rotation sense,
    boolean crank) {

  /** Every sprocket, chain by chain in the direction of travel. */
  static List<Wheel> all(Drive shown) {
    Drive drive = Schematic.placed(shown);
    List<Wheel> wheels = new ArrayList<>();
    for (Chain chain : drive.chains()) {
      ChainInPlace placed = drive.inPlace(chain);
      for (int place : chain.sprocketPlaces()) {
        String shaft = chain.sprocketAt(place).shaft();
        OrientedCircle circle = placed.pitchCircle(place, chain.pitchMm());
        wheels.add(
            new Wheel(
                new Seat(chain.name(), shaft),
                circle.centre(),
                circle.radiusMm(),
                chain.pitchMm(),
                chain.sprocketAt(place).teeth(),
                circle.sense(),
                shaft.equals(drive.crankshaft().name())));
      }
    }
    return wheels;
  }

  /** The smallest sprocket under a point; of two on one shaft the smaller lies in front. */
  static Optional<Wheel> at(List<Wheel> wheels, Vector2D point) {
    return wheels.stream()
        .filter(w -> point.distance(w.centre()) <= w.radiusMm() + 0.6 * w.pitchMm())
        .min(Comparator.comparingDouble(Wheel::radiusMm));
  }
}
