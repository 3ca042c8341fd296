package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Triangle;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.Fitting;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;
import tightside.geometry.Rotation;

/**
 * A loop that touches everything from inside is the convex hull of what it runs over; the hull is
 * found by the JTS Topology Suite, from points on the circles and on the pitch line over the faces.
 *
 * <p>With N points a circle the hull's edges stand inside the true loop by at most the sagitta R (1
 * - cos(pi/N)), so its perimeter is short by at most 2 pi times the largest of them (the perimeter
 * of a convex figure grows by 2 pi for each mm that it is swollen; Steiner's formula).
 */
class OuterLoopTest {

  private static final int POINTS = 2048;

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void isAsLongAsTheHullOfItsSprockets(long seed) {
    Random random = new Random(seed);
    double pitch = 6 + 4 * random.nextDouble();
    List<Circle> onHull = loop(random, pitch);
    Rotation rotation = random.nextBoolean() ? Rotation.CLOCKWISE : Rotation.COUNTERCLOCKWISE;
    if (rotation == Rotation.COUNTERCLOCKWISE) {
      Collections.reverse(onHull);
    }
    List<Shaft> shafts = new ArrayList<>();
    List<RouteEntry> route = new ArrayList<>();
    for (Circle circle : onHull) {
      Role role = shafts.isEmpty() ? Role.CRANKSHAFT : Role.PUMP;
      Shaft shaft = new Shaft("s" + shafts.size(), role, circle.at());
      shafts.add(shaft);
      route.add(Sprocket.inside(shaft.name(), circle.teeth(), new Bearing(0)));
    }
    Chain chain = new Chain("c", ChainKind.ROLLER, pitch, 100, pitch, pitch / 2, route);
    Drive drive = new Drive("seed " + seed, "", rotation, shafts, List.of(chain));
    assertAsLongAs(hull(onHull.stream().map(Circle::points).toList()), path(drive), 70);
  }

  /** The random drives, without what touches them from outside. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void isAsLongAsTheHullOfItsSprocketsAndFaces(long seed) {
    Drive whole = RandomDrives.of(seed);
    Chain chain = whole.chains().get(0);
    List<RouteEntry> inside =
        chain.route().stream().filter(e -> e.contact() == Contact.INSIDE).toList();
    List<List<Coordinate>> points = new ArrayList<>();
    List<Shaft> shafts = new ArrayList<>();
    double largest = 0;
    for (RouteEntry entry : inside) {
      if (entry instanceof Sprocket sprocket) {
        Shaft shaft = whole.shaft(sprocket.shaft()).orElseThrow();
        shafts.add(
            new Shaft(shaft.name(), shafts.isEmpty() ? Role.CRANKSHAFT : Role.PUMP, shaft.at()));
        Circle circle = Circle.of(shaft.at(), sprocket.teeth(), chain.pitchMm());
        points.add(circle.points());
        largest = Math.max(largest, circle.radius());
      } else {
        points.add(facePoints(((Face) entry).curve(), chain.plateHeightMm() / 2));
      }
    }
    Drive drive =
        new Drive("seed " + seed, "", whole.rotation(), shafts, List.of(chain.withRoute(inside)));
    assertAsLongAs(hull(points), path(drive), largest);
  }

  private static void assertAsLongAs(Geometry hull, TautPath path, double largestRadius) {
    double shortBy = 2 * Math.PI * largestRadius * (1 - Math.cos(Math.PI / POINTS));
    assertThat(path.lengthMm() - hull.getLength())
        .as("mm by which the path is longer than the hull")
        .isBetween(-1e-9, shortBy);
    assertThat(shortBy).as("what this can see, mm").isCloseTo(0, within(1e-3));
  }

  private static TautPath path(Drive drive) {
    Chain chain = drive.chains().get(0);
    OptionalDouble pushedBack =
        chain.tensioner().isPresent() ? OptionalDouble.of(0) : OptionalDouble.empty();
    return Fitting.fit(drive.inPlace(chain), chain.pitchMm(), pushedBack).path().orElseThrow();
  }

  private static Geometry hull(List<List<Coordinate>> points) {
    Coordinate[] all = points.stream().flatMap(List::stream).toArray(Coordinate[]::new);
    return new ConvexHull(all, new GeometryFactory()).getConvexHull();
  }

  /** A pitch circle. */
  private record Circle(Vector2D at, int teeth, double radius) {

    static Circle of(Vector2D at, int teeth, double pitch) {
      return new Circle(at, teeth, pitch / (2 * Math.sin(Math.PI / teeth)));
    }

    boolean bears(Coordinate point) {
      double apart = at.distance(Vector2D.of(point.getX(), point.getY()));
      return Math.abs(apart - radius) < 1e-9;
    }

    List<Coordinate> points() {
      return arc(at.getX(), at.getY(), radius, 0, 2 * Math.PI, POINTS);
    }
  }

  private static List<Coordinate> arc(
      double x, double y, double radius, double from, double to, int steps) {
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double angle = from + (to - from) * i / steps;
      points.add(new Coordinate(x + radius * Math.cos(angle), y + radius * Math.sin(angle)));
    }
    return points;
  }

  /** Two to seven circles that do not overlap. */
  private static List<Circle> circles(Random random, double pitch) {
    List<Circle> circles = new ArrayList<>();
    int count = 2 + random.nextInt(6);
    while (circles.size() < count) {
      Vector2D at = Vector2D.of(500 * random.nextDouble(), 500 * random.nextDouble());
      Circle circle = Circle.of(at, 10 + random.nextInt(34), pitch);
      if (circles.stream().allMatch(c -> c.at().distance(at) > c.radius() + circle.radius() + 1)) {
        circles.add(circle);
      }
    }
    return circles;
  }

  /** Circles that bear corners of their hull, clockwise, none of them on two sides of it. */
  private static List<Circle> loop(Random random, double pitch) {
    while (true) {
      List<Circle> circles = circles(random, pitch);
      List<Circle> met = alongHull(circles);
      if (met.size() > 1 && met.size() == Set.copyOf(met).size()) {
        return met;
      }
    }
  }

  /** The circles in the order in which the hull runs over them, clockwise. */
  private static List<Circle> alongHull(List<Circle> circles) {
    Coordinate[] ring = hull(circles.stream().map(Circle::points).toList()).getCoordinates();
    List<Circle> met = new ArrayList<>();
    for (Coordinate corner : ring) {
      Circle on = circles.stream().filter(c -> c.bears(corner)).findFirst().orElseThrow();
      if (met.isEmpty() || met.get(met.size() - 1) != on) {
        met.add(on);
      }
    }
    met.remove(met.size() - 1);
    if (Orientation.isCCW(ring)) {
      Collections.reverse(met);
    }
    return met;
  }

  /** The pitch line over a face, sampled so that no sagitta exceeds that of the sprockets. */
  private static List<Coordinate> facePoints(FaceCurve face, double standOff) {
    Coordinate start = coordinate(face.start());
    Coordinate end = coordinate(face.end());
    List<Coordinate> points = new ArrayList<>();
    points.addAll(arc(start.x, start.y, standOff, 0, 2 * Math.PI, POINTS));
    points.addAll(arc(end.x, end.y, standOff, 0, 2 * Math.PI, POINTS));
    if (!face.straight()) {
      Coordinate centre = Triangle.circumcentre(start, coordinate(face.middle()), end);
      double from = Math.atan2(start.y - centre.y, start.x - centre.x);
      double to = Math.atan2(end.y - centre.y, end.x - centre.x);
      double turn = Math.IEEEremainder(to - from, 2 * Math.PI);
      double radius = centre.distance(start) + standOff;
      points.addAll(arc(centre.x, centre.y, radius, from, from + turn, POINTS));
    }
    return points;
  }

  private static Coordinate coordinate(Vector2D point) {
    return new Coordinate(point.getX(), point.getY());
  }
}
