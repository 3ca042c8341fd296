package tightside.geometry;

import java.util.Optional;

/** The straight run between two outlines: the one among their circles' tangents that both own. */
final class OutlineTangent {

  private OutlineTangent() {}

  static Optional<Tangent> between(Outline first, Outline second) {
    Tangent best = null;
    double leastStray = Double.POSITIVE_INFINITY;
    for (int i = 0; i < first.circles().size(); i++) {
      for (int j = 0; j < second.circles().size(); j++) {
        Optional<Tangent> run = Tangent.between(first.circles().get(i), second.circles().get(j));
        if (run.isPresent()) {
          Bearing heading = run.get().heading();
          double stray = first.strayDegrees(i, heading) + second.strayDegrees(j, heading);
          if (stray < leastStray) {
            leastStray = stray;
            best = run.get();
          }
        }
      }
    }
    boolean owned = leastStray <= Tolerance.TURN.value() * 1e3;
    return owned ? Optional.ofNullable(best) : Optional.empty();
  }
}
