package tightside.second;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The marks of one loop: where each lies along the new chain, and where along the chain as it is. A
 * sprocket without a mark is given one of ours, half-way along its wrap, of which nothing is told.
 */
final class Timing {

  private final Plan.Loop loop;
  private final Fit whenNew;
  private final Fit fit;
  private final Map<String, Integer> reseats;
  private final List<Integer> wheels = new ArrayList<>();
  private final Map<Integer, Double> atFirst = new HashMap<>();
  private final Map<Integer, Double> now = new HashMap<>();
  private final OptionalInt tensioner;

  Timing(Plan.Loop loop, Fit whenNew, Fit fit, Map<String, Integer> reseats) {
    this.loop = loop;
    this.whenNew = whenNew;
    this.fit = fit;
    this.reseats = reseats;
    tensioner =
        IntStream.range(0, loop.route().size())
            .filter(i -> loop.route().get(i) instanceof Plan.Rub rub && rub.push().isPresent())
            .findFirst();
    for (int i = 0; i < loop.route().size(); i++) {
      if (loop.route().get(i) instanceof Plan.Wheel wheel) {
        wheels.add(i);
        if (known()) {
          double tooth = wheel.mark().orElse(line(whenNew).bearingAt(i, 0.5));
          atFirst.put(i, line(whenNew).pitchesTo(i, tooth));
          now.put(i, line(fit).pitchesTo(i, tooth));
        }
      }
    }
  }

  private static Line line(Fit fit) {
    return fit.line().orElseThrow();
  }

  private boolean known() {
    return whenNew.how() == Fit.How.FITS && fit.line().isPresent();
  }

  private Plan.Wheel wheel(int place) {
    return (Plan.Wheel) loop.route().get(place);
  }

  private int teethAhead(int place) {
    return reseats.getOrDefault(loop.name() + "/" + wheel(place).shaft(), 0);
  }

  /** Whether the slack lies between the driving sprocket and a place that comes after it. */
  private boolean pastSlack(int place) {
    return place > tensioner.orElse(0);
  }

  /**
   * Taut strands keep their pitches. Up to the slack a tooth is as far along from the driving
   * sprocket as it was; past it, it is as far behind that as it was.
   */
  Map<String, Double> errors(double ofDriver) {
    Map<String, Double> errors = new HashMap<>();
    if (!known()) {
      return errors;
    }
    double grown = line(fit).pitches() - line(whenNew).pitches();
    for (int place : wheels.subList(1, wheels.size())) {
      double held =
          now.get(0) + atFirst.get(place) - atFirst.get(0) + (pastSlack(place) ? grown : 0);
      double pitches = held - now.get(place) + teethAhead(place) - teethAhead(0);
      int teeth = wheel(place).teeth();
      errors.put(wheel(place).shaft(), pitches * 360 / teeth + ofDriver * wheel(0).teeth() / teeth);
    }
    return errors;
  }

  Answer.Looped looped() {
    double pitches = fit.line().map(Line::pitches).orElse(Double.NaN);
    return new Answer.Looped(whenNew, fit, pitches, known() ? strands() : List.of());
  }

  private List<Answer.Stretch> strands() {
    List<Integer> marked = wheels.stream().filter(i -> wheel(i).mark().isPresent()).toList();
    if (marked.isEmpty()) {
      return List.of();
    }
    int slack = slackStrand(marked);
    double pitchesLeft = line(fit).pitches();
    long linksLeft = loop.links();
    List<Answer.Stretch> strands = new ArrayList<>();
    for (int i = 0; i < marked.size(); i++) {
      int from = marked.get(i);
      int to = marked.get((i + 1) % marked.size());
      double round = to <= from ? line(whenNew).pitches() : 0;
      int over = teethAhead(to) - teethAhead(from);
      double pitches = atFirst.get(to) - atFirst.get(from) + round + over;
      long links = Math.round(pitches - over) + over;
      strands.add(strand(from, to, pitches, links, true));
      pitchesLeft -= i == slack ? 0 : pitches;
      linksLeft -= i == slack ? 0 : links;
    }
    int from = marked.get(slack);
    int to = marked.get((slack + 1) % marked.size());
    strands.set(slack, strand(from, to, pitchesLeft, linksLeft, false));
    return strands;
  }

  /** The strand that carries the tensioner, or else the one that leaves the driving sprocket. */
  private int slackStrand(List<Integer> marked) {
    long before = marked.stream().filter(place -> !pastSlack(place)).count();
    return (int) (before + marked.size() - 1) % marked.size();
  }

  private Answer.Stretch strand(int from, int to, double pitches, long links, boolean taut) {
    return new Answer.Stretch(
        wheel(from).shaft(),
        wheel(to).shaft(),
        pitches,
        links,
        taut || tensioner.isPresent() ? OptionalDouble.of(pitches - links) : OptionalDouble.empty(),
        taut);
  }
}
