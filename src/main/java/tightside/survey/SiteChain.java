package tightside.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.ChainInPlace;
import tightside.geometry.Bearing;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Outline;
import tightside.geometry.StringPiece;
import tightside.geometry.TautString;

/**
 * The path of one chain, run by run, with the plunger at a given extension. A run that no string
 * can be laid along leaves the others as they are: taut strands ask nothing of the slack side.
 */
final class SiteChain {

  private final ChainInPlace inPlace;
  private final double pitchMm;
  private final List<Outline> outlines;
  private final Strings strings;
  private final Map<Integer, Optional<TautString>> runs = new HashMap<>();

  /** Finds the string along a run: from the first outline to the last, past those between. */
  @FunctionalInterface
  interface Strings {
    Optional<TautString> between(String run, List<Outline> met);
  }

  private SiteChain(ChainInPlace inPlace, double pitchMm, List<Outline> outlines, Strings strings) {
    this.inPlace = inPlace;
    this.pitchMm = pitchMm;
    this.outlines = outlines;
    this.strings = strings;
  }

  /** Nothing where a face is hollow toward the chain. */
  static Optional<SiteChain> of(ChainInPlace inPlace, double extensionMm, Strings strings) {
    double pitch = inPlace.chain().pitchMm();
    List<Outline> outlines = new ArrayList<>();
    try {
      for (int place = 0; place < inPlace.chain().route().size(); place++) {
        outlines.add(inPlace.outline(place, pitch, extensionMm));
      }
    } catch (IllegalArgumentException hollowOrTurnedBack) {
      return Optional.empty();
    }
    return Optional.of(new SiteChain(inPlace, pitch, outlines, strings));
  }

  private Chain chain() {
    return inPlace.chain();
  }

  private Optional<TautString> run(int from) {
    return runs.computeIfAbsent(from, this::laid);
  }

  private Optional<TautString> laid(int from) {
    List<Integer> places = chain().sprocketPlaces();
    int i = places.indexOf(from);
    boolean last = i + 1 == places.size();
    int to = places.get(last ? 0 : i + 1);
    int end = last ? outlines.size() : to;
    List<Outline> met = new ArrayList<>(outlines.subList(from, end));
    met.add(outlines.get(to));
    return strings.between(chain().name() + "/" + from, met);
  }

  /** Pitches from mark to mark along a strand; NaN where no string can be laid. */
  double pitches(StrandPlan strand) {
    List<Integer> places = strand.places();
    double sum = 0;
    for (int i = 0; i + 1 < places.size(); i++) {
      Optional<TautString> run = run(places.get(i));
      if (run.isEmpty()) {
        return Double.NaN;
      }
      sum += along(run.get());
      if (i > 0) {
        sum += wrapped(places.get(i), run(places.get(i - 1)).get(), run.get());
      }
    }
    int first = places.get(0);
    int last = places.get(places.size() - 1);
    sum += teeth(first, mark(first), touch(first, run(first).get().departure()));
    int before = places.get(places.size() - 2);
    return sum + teeth(last, touch(last, run(before).get().arrival()), mark(last));
  }

  /** Pitches of the whole loop; NaN where no string can be laid. */
  double pitches() {
    List<Integer> places = chain().sprocketPlaces();
    double sum = 0;
    for (int i = 0; i < places.size(); i++) {
      Optional<TautString> arriving = run(places.get((i + places.size() - 1) % places.size()));
      Optional<TautString> leaving = run(places.get(i));
      if (arriving.isEmpty() || leaving.isEmpty()) {
        return Double.NaN;
      }
      sum += wrapped(places.get(i), arriving.get(), leaving.get()) + along(leaving.get());
    }
    return sum;
  }

  private Bearing mark(int place) {
    return chain().sprocketAt(place).mark().orElseThrow();
  }

  private Bearing touch(int place, Bearing heading) {
    OrientedCircle circle = inPlace.pitchCircle(place, pitchMm);
    return circle.bearingAt(heading);
  }

  private double wrapped(int place, TautString arriving, TautString leaving) {
    return teeth(place, touch(place, arriving.arrival()), touch(place, leaving.departure()));
  }

  /** Teeth from one bearing to another; a mark a little off the wrapped part counts negative. */
  private double teeth(int place, Bearing from, Bearing to) {
    double turn = from.turnTo(to, inPlace.senses().get(place));
    double degrees = turn > 300 ? turn - 360 : turn;
    return degrees * chain().sprocketAt(place).teeth() / 360;
  }

  /** Length in pitches: chords of the arc on a face, length / p elsewhere (model format, 2). */
  private double along(TautString string) {
    double sum = 0;
    for (StringPiece piece : string.pieces()) {
      if (piece instanceof StringPiece.Turn turn && turn.spot() == StringPiece.Spot.FACE_ARC) {
        double half = Math.min(1, pitchMm / (2 * turn.circle().radiusMm()));
        sum += Math.toRadians(turn.degrees()) / (2 * Math.asin(half));
      } else {
        sum += piece.lengthMm() / pitchMm;
      }
    }
    return sum;
  }
}
