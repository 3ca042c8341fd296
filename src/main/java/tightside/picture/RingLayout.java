package tightside.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Gearing;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.PitchCircle;
import tightside.geometry.Rotation;

/**
 * Places for the shafts of a drive of which none are known: every chain a ring, its driving
 * sprocket at the foot of it, the next ones following the way the chain travels. A chain driven by
 * another grows outward from that one.
 */
final class RingLayout {

  /** Times that the rings are made larger where sprockets of different chains would overlap. */
  private static final int TRIES = 14;

  private static final double LARGER = 1.25;

  /** Between two chains on one driving shaft. */
  private static final double FAN_DEGREES = 110;

  /** Between the rims of sprockets that follow each other, in pitches. */
  private static final double GAP_PITCHES = 10;

  private final Drive drive;
  private final Gearing gearing;
  private final double scale;
  private final Map<String, Vector2D> places = new HashMap<>();
  private final Map<String, Bearing> outward = new HashMap<>();

  private RingLayout(Drive drive, double scale) {
    this.drive = drive;
    this.scale = scale;
    gearing = drive.gearing();
    String crank = drive.crankshaft().name();
    places.put(crank, Vector2D.ZERO);
    outward.put(crank, new Bearing(0));
    gearing.order().forEach(this::place);
  }

  /** The place of every shaft, mm. */
  static Map<String, Vector2D> of(Drive drive) {
    double scale = 1;
    RingLayout layout = new RingLayout(drive, scale);
    for (int i = 0; i < TRIES && layout.crowded(); i++) {
      scale *= LARGER;
      layout = new RingLayout(drive, scale);
    }
    return layout.places;
  }

  /**
   * How a sprocket touches its chain in the schematic: as it does in the drive, but where fewer
   * than two sprockets lie inside the loop, all do, for a ring can't be drawn otherwise.
   */
  static Contact contact(Chain chain, Sprocket sprocket) {
    return inside(chain).size() < 2 ? Contact.INSIDE : sprocket.contact();
  }

  private static List<Sprocket> inside(Chain chain) {
    return chain.sprockets().stream().filter(s -> s.contact() == Contact.INSIDE).toList();
  }

  private static double radius(Sprocket sprocket) {
    return new PitchCircle(sprocket.teeth(), Schematic.PITCH_MM).radiusMm();
  }

  /** One chain's ring, from its driving sprocket outward. */
  private void place(Chain chain) {
    List<Sprocket> all = chain.sprockets();
    List<Integer> ring = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (contact(chain, all.get(i)) == Contact.INSIDE) {
        ring.add(i);
      }
    }
    double radius = ringRadius(all, ring);
    Rotation travel = gearing.travel().get(chain.name());
    Bearing out = direction(chain);
    Vector2D foot = places.get(chain.driver().shaft());
    Bearing back = new Bearing(out.degrees() + 180);
    int first = Math.max(0, ring.indexOf(0));
    Vector2D[] at = new Vector2D[all.size()];
    Vector2D centre = foot.add(out.direction().multiply(radius));
    for (int k = 0; k < ring.size(); k++) {
      Bearing spoke = back.plus(360.0 * (k - first) / ring.size(), travel);
      at[ring.get(k)] = centre.add(spoke.direction().multiply(radius));
    }
    for (int k = 0; k < ring.size(); k++) {
      outside(all, at, ring.get(k), ring.get((k + 1) % ring.size()), travel);
    }
    Vector2D shift = at[0].vectorTo(foot);
    for (int i = 1; i < all.size(); i++) {
      Vector2D there = at[i].add(shift);
      places.put(all.get(i).shaft(), there);
      outward.put(all.get(i).shaft(), Bearing.of(centre.add(shift).vectorTo(there)));
    }
  }

  /** Chains on one driving shaft fan out. */
  private Bearing direction(Chain chain) {
    String driver = chain.driver().shaft();
    List<Chain> together =
        gearing.order().stream().filter(c -> c.driver().shaft().equals(driver)).toList();
    double fan = Math.min(FAN_DEGREES, 360.0 / together.size());
    double aside = (together.indexOf(chain) - (together.size() - 1) / 2.0) * fan;
    return outward.get(driver).plus(aside);
  }

  /** So large that each pair on the ring has room, and what presses on the chain between them. */
  private double ringRadius(List<Sprocket> all, List<Integer> ring) {
    double radius = 0;
    for (int k = 0; k < ring.size(); k++) {
      int from = ring.get(k);
      int to = ring.get((k + 1) % ring.size());
      double chord = radius(all.get(from)) + radius(all.get(to));
      double gap = GAP_PITCHES * Schematic.PITCH_MM;
      chord += Math.max(gap, 0.6 * chord);
      for (int i = (from + 1) % all.size(); i != to; i = (i + 1) % all.size()) {
        chord += 2.6 * radius(all.get(i)) + gap / 2;
      }
      radius = Math.max(radius, scale * chord / (2 * Math.sin(Math.PI / ring.size())));
    }
    return radius;
  }

  /**
   * Places the sprockets that press from outside between two of the ring, deeper in the middle so
   * that each is wrapped.
   */
  private static void outside(
      List<Sprocket> all, Vector2D[] at, int from, int to, Rotation travel) {
    int between = Math.floorMod(to - from, all.size()) - 1;
    for (int m = 1; m <= between; m++) {
      int i = (from + m) % all.size();
      double share = m / (between + 1.0);
      Vector2D foot = at[from].lerp(at[to], share);
      Vector2D along = at[from].vectorTo(at[to]).normalize();
      Vector2D left = Vector2D.of(-along.getY(), along.getX());
      Vector2D out = left.multiply(travel.sign());
      double chain = (1 - share) * radius(all.get(from)) + share * radius(all.get(to));
      double bite = 0.7 * radius(all.get(i)) * (1 + 0.8 * Math.sin(Math.PI * share));
      at[i] = foot.add(out.multiply(chain + radius(all.get(i)) - bite));
    }
  }

  /** Whether sprockets of two shafts would be drawn over each other. */
  private boolean crowded() {
    Map<String, Double> largest = new HashMap<>();
    for (Chain chain : drive.chains()) {
      chain.sprockets().forEach(s -> largest.merge(s.shaft(), radius(s), Math::max));
    }
    List<String> shafts = new ArrayList<>(largest.keySet());
    for (int i = 0; i < shafts.size(); i++) {
      for (int j = i + 1; j < shafts.size(); j++) {
        double apart = places.get(shafts.get(i)).distance(places.get(shafts.get(j)));
        double room = largest.get(shafts.get(i)) + largest.get(shafts.get(j));
        if (apart < room + 3 * Schematic.PITCH_MM) {
          return true;
        }
      }
    }
    return false;
  }
}
