package tightside.readings;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Joint;
import tightside.drive.RouteEntry;
import tightside.drive.Sprocket;
import tightside.timing.Drives;

/** Drives whose last sprocket is held by its bolt's clamp alone. */
final class Clamped {

  private Clamped() {}

  static Drive exhaustOf(Drive drive) {
    Chain chain = Drives.chain(drive);
    List<RouteEntry> route = new ArrayList<>();
    for (RouteEntry entry : chain.route()) {
      route.add(
          entry instanceof Sprocket s && s.shaft().equals("exhaust")
              ? new Sprocket(
                  s.shaft(),
                  s.teeth(),
                  s.mark(),
                  s.contact(),
                  Joint.FRICTION,
                  s.seen(),
                  s.strandSeen())
              : entry);
    }
    return new Drive(
        drive.name(),
        drive.about(),
        drive.rotation(),
        drive.shafts(),
        List.of(chain.withRoute(route)));
  }
}
