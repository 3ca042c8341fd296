package tightside.session;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;

/** Crank to idler to cam, with no tensioner: the idler carries sprockets of both chains. */
final class TwoStages {

  private static final Bearing UP = new Bearing(0);
  private static final Bearing DOWN = new Bearing(180);

  private TwoStages() {}

  static Drive drive() {
    return new Drive(
        "Two stages",
        "Invented for tests.",
        Rotation.CLOCKWISE,
        List.of(
            new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
            new Shaft("idler", Role.IDLER, Vector2D.of(0, 160)),
            new Shaft("cam", Role.CAMSHAFT, Vector2D.of(0, 320))),
        List.of(
            chain("lower", Sprocket.inside("crank", 20, DOWN), Sprocket.inside("idler", 30, UP)),
            chain("upper", Sprocket.inside("idler", 21, DOWN), Sprocket.inside("cam", 28, UP))));
  }

  private static Chain chain(String name, Sprocket driver, Sprocket driven) {
    return new Chain(name, ChainKind.ROLLER, 8, 66, 7.2, 5, List.of(driver, driven));
  }
}
