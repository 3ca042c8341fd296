package tightside.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Routing;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Rotation;

/** A route as the tables write it: "size sense x y" for each wheel, with semicolons between. */
public record Route(List<Wheel> wheels) {

  /**
   * A wheel of a route.
   *
   * @param size teeth of a sprocket, radius of a pulley
   * @param sense the way the chain turns round it
   */
  public record Wheel(double size, Rotation sense, Vector2D at) {

    static Wheel parse(String text) {
      String[] words = text.strip().split(" ");
      Vector2D at = Vector2D.of(Double.parseDouble(words[2]), Double.parseDouble(words[3]));
      return new Wheel(Double.parseDouble(words[0]), Route.sense(words[1]), at);
    }
  }

  public static Route parse(String text) {
    return new Route(List.of(text.split(";")).stream().map(Wheel::parse).toList());
  }

  /** "cw" or "ccw". */
  public static Rotation sense(String word) {
    return switch (word) {
      case "cw" -> Rotation.CLOCKWISE;
      case "ccw" -> Rotation.COUNTERCLOCKWISE;
      default -> throw new IllegalArgumentException("neither cw nor ccw: " + word);
    };
  }

  /** The belt round the wheels as pulleys. */
  public Loop belt() {
    return Loop.round(
        wheels.stream().map(w -> new OrientedCircle(w.at(), w.size(), w.sense())).toList());
  }

  /** The path of a chain round the wheels as sprockets, the first being the crankshaft's. */
  public TautPath chain(double pitchMm) {
    Rotation travel = wheels.get(0).sense();
    List<Shaft> shafts = new ArrayList<>();
    List<Sprocket> sprockets = new ArrayList<>();
    for (int i = 0; i < wheels.size(); i++) {
      Wheel wheel = wheels.get(i);
      String name = "shaft " + i;
      shafts.add(new Shaft(name, i == 0 ? Role.CRANKSHAFT : Role.IDLER, wheel.at()));
      sprockets.add(
          Sprocket.inside(name, (int) wheel.size(), new Bearing(0))
              .withMark(Optional.empty())
              .withContact(wheel.sense() == travel ? Contact.INSIDE : Contact.OUTSIDE));
    }
    Chain chain =
        new Chain(
            "main", ChainKind.ROLLER, pitchMm, 100, pitchMm, pitchMm / 2, List.copyOf(sprockets));
    Drive drive = new Drive("Route", "From a test of others.", travel, shafts, List.of(chain));
    Routing routing = Routing.of(drive.inPlace(chain), pitchMm, 0);
    assertThat(routing).isInstanceOf(Routing.Routed.class);
    return ((Routing.Routed) routing).path();
  }
}
