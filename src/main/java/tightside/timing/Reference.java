package tightside.timing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.ChainInPlace;
import tightside.drive.Drive;
import tightside.drive.Fitting;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.Tolerance;

/**
 * One new chain at the reference position: what every error is measured from.
 *
 * @param fit how the new chain fits
 * @param marks by place on the route: pitches from where the path begins to the mark; empty without
 *     a path
 * @param slackAfter the place of the sprocket after which the chain is slack: the one before the
 *     tensioner, or the driving one
 */
record Reference(
    ChainInPlace inPlace,
    ChainFit fit,
    Map<Integer, Double> marks,
    List<MarkOff> marksOff,
    int slackAfter) {

  static Reference of(Drive drive, Chain chain) {
    ChainInPlace inPlace = drive.inPlace(chain);
    ChainFit fit = Fitting.fit(inPlace, chain.pitchMm(), OptionalDouble.empty());
    Map<Integer, Double> marks = new HashMap<>();
    List<MarkOff> marksOff = new ArrayList<>();
    Optional<TautPath> path = fit.path();
    if (path.isPresent()) {
      for (int place : markedPlaces(chain)) {
        Sprocket sprocket = chain.sprocketAt(place);
        Bearing mark = sprocket.mark().orElseThrow();
        double turn = path.get().arrivesAt(place).signedTurnTo(mark, inPlace.senses().get(place));
        double wrap = path.get().wrap(place).degrees();
        double into = turn < -Tolerance.TURN.value() ? turn + 360 : Math.max(0, turn);
        if (into > wrap + Tolerance.TURN.value()) {
          marksOff.add(off(path.get(), place, sprocket, mark));
        }
        marks.put(place, path.get().pitchesTo(place) + into * sprocket.teeth() / 360);
      }
    }
    return new Reference(inPlace, fit, marks, marksOff, slackAfter(chain));
  }

  private static MarkOff off(TautPath path, int place, Sprocket sprocket, Bearing mark) {
    Bearing arrives = path.arrivesAt(place);
    Bearing leaves = path.leavesAt(place);
    boolean clockwise = path.wrap(place).circle().sense().sign() > 0;
    return new MarkOff(
        place, sprocket.shaft(), mark, clockwise ? arrives : leaves, clockwise ? leaves : arrives);
  }

  private static int slackAfter(Chain chain) {
    return chain
        .tensionerPlace()
        .map(t -> chain.sprocketPlaces().stream().filter(p -> p < t).reduce(0, (a, b) -> b))
        .orElse(0);
  }

  static List<Integer> markedPlaces(Chain chain) {
    return chain.sprocketPlaces().stream()
        .filter(place -> chain.sprocketAt(place).mark().isPresent())
        .toList();
  }

  Chain chain() {
    return inPlace.chain();
  }

  /** Whether the new chain fits and every mark lies under it. */
  boolean sound() {
    return fit instanceof ChainFit.Solved && marksOff.isEmpty();
  }

  TautPath path() {
    return fit.path().orElseThrow();
  }

  /** The strands as they are when new. */
  List<Strand> strands() {
    List<Integer> places = markedPlaces(chain());
    double total = path().pitches();
    List<Strand> strands = new ArrayList<>();
    long counted = 0;
    int slack = -1;
    for (int i = 0; i < places.size(); i++) {
      int from = places.get(i);
      int to = places.get((i + 1) % places.size());
      double pitches = marks.get(to) - marks.get(from) + (i + 1 < places.size() ? 0 : total);
      boolean taut = !slackLiesIn(from, to);
      long links = taut ? Math.round(pitches) : 0;
      counted += links;
      slack = taut ? slack : i;
      strands.add(
          new Strand(
              chain().sprocketAt(from).shaft(),
              chain().sprocketAt(to).shaft(),
              from,
              to,
              pitches,
              links,
              OptionalDouble.of(pitches - links),
              taut,
              seen(from, to)));
    }
    if (slack >= 0) {
      long rest = chain().links() - counted;
      strands.set(slack, slackSide(strands.get(slack), rest));
    }
    return strands;
  }

  private Strand slackSide(Strand s, long links) {
    OptionalDouble misfit =
        chain().tensionerPlace().isPresent()
            ? OptionalDouble.of(s.pitches() - links)
            : OptionalDouble.empty();
    return new Strand(
        s.from(), s.to(), s.fromPlace(), s.toPlace(), s.pitches(), links, misfit, false, s.seen());
  }

  /** Whether the slack lies between two marked sprockets, going from the first to the next. */
  private boolean slackLiesIn(int from, int to) {
    return from < to
        ? slackAfter >= from && slackAfter < to
        : slackAfter >= from || slackAfter < to;
  }

  /** The hardest to see of the runs that make up a strand. */
  private Seen seen(int from, int to) {
    Seen hardest = Seen.COVER_ON;
    List<Integer> places = chain().sprocketPlaces();
    int i = places.indexOf(from);
    do {
      Seen run = chain().sprocketAt(places.get(i)).strandSeen();
      hardest = run.compareTo(hardest) > 0 ? run : hardest;
      i = (i + 1) % places.size();
    } while (places.get(i) != to);
    return hardest;
  }
}
