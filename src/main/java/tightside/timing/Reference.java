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
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.Tolerance;

/**
 * One new chain at the reference position, of which the path is known.
 *
 * @param fit how the new chain fits
 * @param marks by place on the route: pitches from where the path begins to the mark; empty without
 *     a path
 * @param route the marked sprockets and what lies between them
 */
record Reference(
    ChainInPlace inPlace,
    ChainFit fit,
    Map<Integer, Double> marks,
    List<MarkOff> marksOff,
    MarkedRoute route)
    implements Datum {

  static Reference of(Drive drive, Chain chain) {
    ChainInPlace inPlace = drive.inPlace(chain);
    ChainFit fit = Fitting.fit(inPlace, chain.pitchMm(), OptionalDouble.empty());
    Map<Integer, Double> marks = new HashMap<>();
    List<MarkOff> marksOff = new ArrayList<>();
    MarkedRoute route = MarkedRoute.of(chain);
    Optional<TautPath> path = fit.path();
    if (path.isPresent()) {
      for (int place : route.places()) {
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
    return new Reference(inPlace, fit, marks, marksOff, route);
  }

  private static MarkOff off(TautPath path, int place, Sprocket sprocket, Bearing mark) {
    Bearing arrives = path.arrivesAt(place);
    Bearing leaves = path.leavesAt(place);
    boolean clockwise = path.wrap(place).circle().sense().sign() > 0;
    return new MarkOff(
        place, sprocket.shaft(), mark, clockwise ? arrives : leaves, clockwise ? leaves : arrives);
  }

  int slackAfter() {
    return route.slackAfter();
  }

  @Override
  public Chain chain() {
    return inPlace.chain();
  }

  /** Whether the new chain fits and every mark lies under it. */
  @Override
  public boolean sound() {
    return fit instanceof ChainFit.Solved && marksOff.isEmpty();
  }

  TautPath path() {
    return fit.path().orElseThrow();
  }

  @Override
  public ChainFit fit(double stretchPercent, OptionalDouble heldMm) {
    return stretchPercent == 0 && heldMm.isEmpty()
        ? fit
        : Fitting.fit(inPlace, chain().pitchStretchedMm(stretchPercent), heldMm);
  }

  @Override
  public Optional<Settling> settling(ChainFit now, double stretchPercent) {
    return now.path().map(path -> new PathSettling(this, path));
  }

  @Override
  public List<Strand> strands() {
    double total = path().pitches();
    List<Strand> strands = new ArrayList<>();
    long counted = 0;
    int slack = -1;
    for (MarkedRoute.Reach reach : route.reaches()) {
      double round = reach.from() < reach.to() ? 0 : total;
      double pitches = marks.get(reach.to()) - marks.get(reach.from()) + round;
      long links = reach.taut() ? Math.round(pitches) : 0;
      counted += links;
      slack = reach.taut() ? slack : strands.size();
      strands.add(strand(reach, pitches, links, OptionalDouble.of(pitches - links)));
    }
    if (slack >= 0) {
      long rest = chain().links() - counted;
      double pitches = strands.get(slack).pitches();
      OptionalDouble misfit =
          chain().tensionerPlace().isPresent()
              ? OptionalDouble.of(pitches - rest)
              : OptionalDouble.empty();
      strands.set(slack, strand(route.reaches().get(slack), pitches, rest, misfit));
    }
    return strands;
  }

  private Strand strand(
      MarkedRoute.Reach reach, double pitches, long links, OptionalDouble misfit) {
    return new Strand(
        chain().sprocketAt(reach.from()).shaft(),
        chain().sprocketAt(reach.to()).shaft(),
        reach.from(),
        reach.to(),
        pitches,
        links,
        misfit,
        reach.taut(),
        reach.seen());
  }
}
