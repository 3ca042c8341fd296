package tightside.timing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Guide;
import tightside.drive.Plunger;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;
import tightside.geometry.Rotation;

/** Drives built in code, for tests that need no file. */
public final class Drives {

  private Drives() {}

  /** The answered example of the model format's description. */
  public static Drive answered() {
    return new Drive(
        "Two camshafts, arm on the slack side",
        "Invented for practice.",
        Rotation.CLOCKWISE,
        List.of(
            new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
            new Shaft("intake", Role.CAMSHAFT, Vector2D.of(-52, 301.4)),
            new Shaft("exhaust", Role.CAMSHAFT, Vector2D.of(52, 301.4))),
        List.of(
            new Chain(
                "main",
                ChainKind.BUSH,
                8.0,
                118,
                7.2,
                5.0,
                List.of(
                    Sprocket.inside("crank", 18, new Bearing(180)),
                    new Arm(
                        "tensioner",
                        Contact.OUTSIDE,
                        Vector2D.of(-90, 240),
                        face(-44, 70, -61, 150, -86, 235),
                        Vector2D.of(-58, 85),
                        new Plunger(new Bearing(90), 28, OptionalDouble.of(1.5)),
                        Seen.COVER_OFF),
                    Sprocket.inside("intake", 36, new Bearing(343.49)),
                    Sprocket.inside("exhaust", 36, new Bearing(23.49)),
                    new Guide(
                        "fixed",
                        Contact.OUTSIDE,
                        face(86, 235, 60, 150, 44, 70),
                        Seen.COVER_OFF)))));
  }

  /** A face from six coordinates. */
  public static FaceCurve face(double... xy) {
    return new FaceCurve(
        Vector2D.of(xy[0], xy[1]), Vector2D.of(xy[2], xy[3]), Vector2D.of(xy[4], xy[5]));
  }

  /** The only chain of a drive. */
  public static Chain chain(Drive drive) {
    return drive.chains().get(0);
  }

  static Optional<ChainSolution> first(Solution solution) {
    return solution.chains().stream().findFirst();
  }
}
