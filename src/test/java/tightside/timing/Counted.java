package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.ChainSize;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.Guide;
import tightside.drive.Listed;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;

/** What a person who can count, but not measure places, would know of a drive. */
public final class Counted {

  private Counted() {}

  /** The drive by its counts alone: not even the pitch of a chain is known. */
  public static Drive only(Drive full) {
    return strip(full, false);
  }

  /** The same with the pitch of every chain, and the length of every free run along the chain. */
  public static Drive withRuns(Drive full) {
    return strip(full, true);
  }

  private static Drive strip(Drive full, boolean runs) {
    List<Shaft> shafts =
        full.shafts().stream().map(s -> Shaft.unplaced(s.name(), s.role())).toList();
    Solution solution = Solver.solve(full, State.reference());
    List<Chain> chains =
        full.chains().stream()
            .map(chain -> strip(chain, solution.chain(chain.name()).orElseThrow(), runs))
            .toList();
    return new Drive(full.name(), full.about(), full.rotation(), shafts, chains);
  }

  private static Chain strip(Chain chain, ChainSolution solution, boolean runs) {
    List<RouteEntry> route = new ArrayList<>();
    for (int place = 0; place < chain.route().size(); place++) {
      RouteEntry entry = chain.route().get(place);
      if (entry instanceof Sprocket sprocket) {
        OptionalDouble run =
            runs
                ? OptionalDouble.of(runMm(chain, solution.fit().path().orElseThrow(), place))
                : OptionalDouble.empty();
        route.add(sprocket.marked(sprocket.marked()).withStraight(run));
      } else {
        route.add(listed((Face) entry));
      }
    }
    ChainSize size = ChainSize.UNKNOWN;
    ChainSize pitch =
        new ChainSize(
            Optional.empty(),
            OptionalDouble.of(chain.pitchMm()),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    List<Integer> counts =
        solution.strands().stream().map(s -> Math.toIntExact(s.links())).toList();
    return new Chain(chain.name(), runs ? pitch : size, chain.links(), route, Optional.of(counts));
  }

  /** Along the chain from one sprocket to the next. */
  private static double runMm(Chain chain, TautPath path, int place) {
    double lengthMm = 0;
    List<TautPath.Leg> legs = path.legs();
    int leg = 0;
    while (legs.get(leg).place() != place) {
      leg++;
    }
    for (leg = (leg + 1) % legs.size(); !sprocket(chain, legs.get(leg)); ) {
      lengthMm += legs.get(leg).piece().lengthMm();
      leg = (leg + 1) % legs.size();
    }
    return lengthMm;
  }

  private static boolean sprocket(Chain chain, TautPath.Leg leg) {
    return leg.place() != TautPath.NOWHERE && chain.route().get(leg.place()) instanceof Sprocket;
  }

  private static Listed listed(Face face) {
    String kind = face instanceof Guide ? "guide" : face instanceof Arm ? "arm" : "shoe";
    return new Listed(
        Listed.Kind.valueOf(kind.toUpperCase(Locale.ROOT)),
        face.name(),
        face.contact(),
        face.seen());
  }
}
