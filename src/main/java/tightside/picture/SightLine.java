package tightside.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.drive.Tensioner;
import tightside.geometry.Tolerance;

/** What of one chain can be seen. */
final class SightLine {

  /** Samples along the path, in pitches. */
  private static final double STEP = 0.25;

  private final ChainView view;
  private final Seen access;
  private final List<Sample> samples = new ArrayList<>();

  private record Sample(Vector2D at, boolean seen) {}

  SightLine(ChainView view, Seen access) {
    this.view = view;
    this.access = access;
    view.path().ifPresent(this::sample);
  }

  private void sample(TautPath path) {
    PathWalk walk = new PathWalk(path);
    for (double at = 0; at < walk.pitches(); at += STEP) {
      samples.add(new Sample(walk.pointAt(at), onPath(path, at)));
    }
  }

  private boolean onPath(TautPath path, double at) {
    Chain chain = view.chain();
    int under = chain.sprocketPlaces().get(0);
    for (int place : chain.sprocketPlaces()) {
      under = path.pitchesTo(place) <= at + Tolerance.TURN.value() ? place : under;
    }
    Sprocket sprocket = chain.sprocketAt(under);
    double wrap = path.wrap(under).degrees() * sprocket.teeth() / 360;
    return at <= path.pitchesTo(under) + wrap ? mark(under) : sees(sprocket.strandSeen());
  }

  private boolean sees(Seen what) {
    return what != Seen.NEVER && what.compareTo(access) <= 0;
  }

  boolean mark(int place) {
    return sees(view.chain().sprocketAt(place).seen());
  }

  /** Whether the tensioner shows, by itself or by the run that it leans on. */
  boolean tensioner() {
    Chain chain = view.chain();
    return chain.tensioner().map(Tensioner::seen).filter(this::sees).isPresent()
        || chain
            .tensionerPlace()
            .flatMap(t -> chain.sprocketPlaces().stream().filter(p -> p < t).reduce((a, b) -> b))
            .map(place -> sees(chain.sprocketAt(place).strandSeen()))
            .orElse(false);
  }

  /** Whether what lies there on the chain can be seen. */
  boolean at(Vector2D point) {
    return samples.stream()
        .min(Comparator.comparingDouble(s -> s.at().distanceSq(point)))
        .map(Sample::seen)
        .orElse(false);
  }
}
