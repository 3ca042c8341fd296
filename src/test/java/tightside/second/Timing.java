package tightside.second;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The marks of one loop: where each lies along the new chain, and where along the chain as it is.
 */
final class Timing {

  private final Plan.Loop loop;
  private final Fit whenNew;
  private final Fit fit;
  private final Map<String, Integer> reseats;
  private final List<Integer> marked = new ArrayList<>();
  private final List<Double> atFirst = new ArrayList<>();
  private final List<Double> now = new ArrayList<>();
  private int slack;
  private boolean tensioned;

  Timing(Plan.Loop loop, Fit whenNew, Fit fit, Map<String, Integer> reseats) {
    this.loop = loop;
    this.whenNew = whenNew;
    this.fit = fit;
    this.reseats = reseats;
    for (int i = 0; i < loop.route().size(); i++) {
      Plan.Item item = loop.route().get(i);
      if (item instanceof Plan.Wheel wheel && wheel.mark().isPresent()) {
        marked.add(i);
        if (known()) {
          atFirst.add(line(whenNew).pitchesTo(i, wheel.mark().getAsDouble()));
          now.add(line(fit).pitchesTo(i, wheel.mark().getAsDouble()));
        }
      } else if (item instanceof Plan.Rub rub && rub.push().isPresent()) {
        slack = marked.size() - 1;
        tensioned = true;
      }
    }
  }

  private static Line line(Fit fit) {
    return fit.line().orElseThrow();
  }

  private boolean known() {
    return whenNew.how() == Fit.How.FITS && fit.line().isPresent();
  }

  private Plan.Wheel wheel(int i) {
    return (Plan.Wheel) loop.route().get(marked.get(i % marked.size()));
  }

  private int teethAhead(int i) {
    return reseats.getOrDefault(loop.name() + "/" + wheel(i).shaft(), 0);
  }

  /** Pitches of a strand at first, mark to mark. */
  private double strandAtFirst(int i) {
    return i + 1 < marked.size()
        ? atFirst.get(i + 1) - atFirst.get(i)
        : line(whenNew).pitches() + atFirst.get(0) - atFirst.get(i);
  }

  /**
   * Taut strands keep their pitches. Up to the slack strand a mark is as far along from the driving
   * one as it was; past it, it is as far behind it as it was.
   */
  Map<String, Double> errors(double ofDriver) {
    Map<String, Double> errors = new HashMap<>();
    if (!known()) {
      return errors;
    }
    double grown = line(fit).pitches() - line(whenNew).pitches();
    for (int i = 1; i < marked.size(); i++) {
      double held = now.get(0) + atFirst.get(i) - atFirst.get(0) + (i <= slack ? 0 : grown);
      double pitches = held - now.get(i) + teethAhead(i) - teethAhead(0);
      int teeth = wheel(i).teeth();
      errors.put(wheel(i).shaft(), pitches * 360 / teeth + ofDriver * wheel(0).teeth() / teeth);
    }
    return errors;
  }

  Answer.Looped looped() {
    double pitches = fit.line().map(Line::pitches).orElse(Double.NaN);
    return new Answer.Looped(whenNew, fit, pitches, known() ? strands() : List.of());
  }

  private List<Answer.Stretch> strands() {
    List<Answer.Stretch> strands = new ArrayList<>();
    double pitchesLeft = line(fit).pitches();
    long linksLeft = loop.links();
    for (int i = 0; i < marked.size(); i++) {
      if (i != slack) {
        pitchesLeft -= pitches(i);
        linksLeft -= links(i);
      }
    }
    for (int i = 0; i < marked.size(); i++) {
      strands.add(i == slack ? strand(i, pitchesLeft, linksLeft) : strand(i, pitches(i), links(i)));
    }
    return strands;
  }

  private double pitches(int i) {
    return strandAtFirst(i) + teethAhead(i + 1) - teethAhead(i);
  }

  private long links(int i) {
    return Math.round(strandAtFirst(i)) + teethAhead(i + 1) - teethAhead(i);
  }

  private Answer.Stretch strand(int i, double pitches, long links) {
    boolean free = i == slack && !tensioned;
    return new Answer.Stretch(
        wheel(i).shaft(),
        wheel(i + 1).shaft(),
        pitches,
        links,
        free ? OptionalDouble.empty() : OptionalDouble.of(pitches - links),
        i != slack);
  }
}
