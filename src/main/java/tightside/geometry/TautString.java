package tightside.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A string pulled taut from one outline to another, past obstacles that it may or may not touch, in
 * their order of travel. What is touched is found, not assumed: an obstacle that the string clears
 * takes no part, one that it cuts is leant against.
 *
 * @param pieces from the first straight run to the last, both included
 */
public record TautString(List<StringPiece> pieces) {

  public TautString {
    pieces = List.copyOf(pieces);
  }

  /** The heading with which the string leaves the first outline. */
  public Bearing departure() {
    return ((StringPiece.Straight) pieces.get(0)).tangent().heading();
  }

  /** The heading with which it arrives at the last. */
  public Bearing arrival() {
    return ((StringPiece.Straight) pieces.get(pieces.size() - 1)).tangent().heading();
  }

  /**
   * The taut string between two outlines.
   *
   * <p>Active-set search: starting from the bare tangent, the obstacle cut deepest joins, an
   * obstacle round which the string would have to turn the wrong way leaves, until neither is left.
   * Should that ever go round in circles, every subset is tried and the shortest that fits is
   * taken.
   *
   * @param obstacles in the order in which the string passes them
   * @return nothing where no string fits: two outlines overlap, or the string is trapped
   */
  public static Optional<TautString> between(Outline first, Outline last, List<Outline> obstacles) {
    List<Integer> touched = new ArrayList<>();
    for (int step = 0; step < 4 * obstacles.size() + 4; step++) {
      Optional<Attempt> attempt = Attempt.through(first, last, obstacles, touched);
      if (attempt.isEmpty()) {
        break;
      }
      Optional<Integer> leaves = attempt.get().turnedTheWrongWay();
      if (leaves.isPresent()) {
        touched.remove(leaves.get());
        continue;
      }
      Optional<Integer> joins = attempt.get().cutDeepest();
      if (joins.isEmpty()) {
        return Optional.of(attempt.get().string());
      }
      touched.add(joins.get());
      touched.sort(null);
    }
    return shortestOfAllSubsets(first, last, obstacles);
  }

  private static Optional<TautString> shortestOfAllSubsets(
      Outline first, Outline last, List<Outline> obstacles) {
    int most = 12;
    if (obstacles.size() > most) {
      return Optional.empty();
    }
    TautString best = null;
    for (int bits = 0; bits < 1 << obstacles.size(); bits++) {
      int subset = bits;
      List<Integer> touched =
          IntStream.range(0, obstacles.size()).filter(i -> (subset >> i & 1) == 1).boxed().toList();
      Optional<TautString> fit =
          Attempt.through(first, last, obstacles, touched)
              .filter(a -> a.turnedTheWrongWay().isEmpty() && a.cutDeepest().isEmpty())
              .map(Attempt::string);
      if (fit.isPresent() && (best == null || fit.get().lengthMm() < best.lengthMm())) {
        best = fit.get();
      }
    }
    return Optional.ofNullable(best);
  }

  /** Length from the first outline to the last, mm. */
  public double lengthMm() {
    return pieces.stream().mapToDouble(StringPiece::lengthMm).sum();
  }

  /** The string that touches a given choice of the obstacles, right or wrong. */
  private record Attempt(List<Outline> obstacles, List<Integer> touched, List<Tangent> runs) {

    static Optional<Attempt> through(
        Outline first, Outline last, List<Outline> obstacles, List<Integer> touched) {
      List<Tangent> runs = new ArrayList<>();
      Outline from = first;
      for (int i = 0; i <= touched.size(); i++) {
        Outline to = i < touched.size() ? obstacles.get(touched.get(i)) : last;
        Optional<Tangent> run = OutlineTangent.between(from, to);
        if (run.isEmpty()) {
          return Optional.empty();
        }
        runs.add(run.get());
        from = to;
      }
      return Optional.of(new Attempt(obstacles, List.copyOf(touched), List.copyOf(runs)));
    }

    private double turnDegrees(int i) {
      return runs.get(i)
          .heading()
          .signedTurnTo(runs.get(i + 1).heading(), obstacles.get(touched.get(i)).sense());
    }

    Optional<Integer> turnedTheWrongWay() {
      int worst = -1;
      for (int i = 0; i < touched.size(); i++) {
        if (turnDegrees(i) < -Tolerance.TURN.value()
            && (worst < 0 || turnDegrees(i) < turnDegrees(worst))) {
          worst = i;
        }
      }
      return worst < 0 ? Optional.empty() : Optional.of(touched.get(worst));
    }

    Optional<Integer> cutDeepest() {
      int deepest = -1;
      double depth = Tolerance.TOUCH.value();
      int run = 0;
      for (int i = 0; i < obstacles.size(); i++) {
        if (touched.contains(i)) {
          run++;
          continue;
        }
        double cut = obstacles.get(i).depthAcross(runs.get(run));
        if (cut > depth) {
          depth = cut;
          deepest = i;
        }
      }
      return deepest < 0 ? Optional.empty() : Optional.of(deepest);
    }

    TautString string() {
      List<StringPiece> pieces = new ArrayList<>();
      for (int i = 0; i < runs.size(); i++) {
        pieces.add(new StringPiece.Straight(runs.get(i)));
        if (i < touched.size()) {
          int index = touched.get(i);
          pieces.addAll(
              obstacles
                  .get(index)
                  .passage(index, runs.get(i).heading(), runs.get(i + 1).heading()));
        }
      }
      return new TautString(pieces);
    }
  }
}
