package tightside.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.files.ModelReader;

/** Drives to be measured, and the same drawn carelessly. */
public final class MeasuredDrives {

  private MeasuredDrives() {}

  public static Drive model(String name) {
    return ModelReader.read(Path.of("models", name + ".yaml")).model().orElseThrow().drive();
  }

  /** The drive as somebody sketched it: shafts off by millimetres, marks by degrees. */
  public static Drive sketched(Drive drive, double mm, double degrees) {
    List<Shaft> shafts = new ArrayList<>();
    int i = 0;
    for (Shaft s : drive.shafts()) {
      Vector2D off = Vector2D.of(mm * (i % 2 == 0 ? 1 : -1), mm * (i % 3 - 1));
      boolean crank = s.name().equals(drive.crankshaft().name());
      shafts.add(crank ? s : new Shaft(s.name(), s.role(), s.at().add(off)));
      i++;
    }
    List<Chain> chains = new ArrayList<>();
    for (Chain c : drive.chains()) {
      List<RouteEntry> route = new ArrayList<>();
      for (RouteEntry e : c.route()) {
        route.add(
            e instanceof Sprocket s && s.mark().isPresent()
                ? s.withMark(Optional.of(s.mark().get().plus(degrees)))
                : e);
      }
      chains.add(c.withRoute(route));
    }
    return new Drive(drive.name(), drive.about(), drive.rotation(), shafts, chains);
  }
}
