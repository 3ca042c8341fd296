package tightside.timing;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Role;

/**
 * Pressing the plunger in by turning a camshaft by its flats, its locking tool out and every other
 * shaft locked: the chain itself pushes the tensioner back.
 *
 * <p>Only a camshaft at an end of the slack side can do it: the one at which that strand arrives
 * has to turn ahead, the one from which it leaves has to turn back. The slack side keeps its links;
 * what its path gives up, the camshaft takes. Its other strand goes slack meanwhile.
 *
 * @param way in which the camshaft turns
 * @param fromMm where the plunger stands free
 * @param toMm where it is held
 * @param turnDegrees camshaft degrees from the one to the other, positive; once the plunger is held
 *     the camshaft goes back by as much, and that is the slack of the loop
 * @param degreesPerMm camshaft degrees per mm of plunger at the start
 * @param nearest where valves and pistons come nearest on the way; nothing where nobody said
 */
public record PressBack(
    String shaft,
    Lag way,
    double fromMm,
    double toMm,
    double turnDegrees,
    double degreesPerMm,
    Optional<Nearest> nearest) {

  /** A step in which the way of the camshaft is looked at, camshaft degrees. */
  private static final double LOOK_DEGREES = 0.25;

  /** A step of the plunger that is small against its travel, mm. */
  private static final double SMALL_MM = 1e-4;

  /**
   * The least clearance between valves and pistons.
   *
   * @param clearanceMm at zero and below they touch
   * @param atDegrees camshaft degrees turned, positive = ahead
   */
  public record Nearest(double clearanceMm, double atDegrees) {
    public boolean touches() {
      return clearanceMm <= 0;
    }
  }

  /**
   * @param toMm where the plunger is to be held; 0 is fully back
   * @param clearance the least clearance (mm) of that camshaft's valves at a turn of it (its own
   *     degrees from the reference position, positive = ahead)
   * @return nothing where that camshaft is at no end of the slack side, the chain does not fit, or
   *     its plunger stands no further out than that
   */
  public static Optional<PressBack> of(
      Drive drive,
      Chain chain,
      String shaft,
      double toMm,
      Optional<DoubleUnaryOperator> clearance) {
    Optional<SlackByExtension> slack = SlackByExtension.of(drive, chain, 0);
    Optional<Strand> side = slack.flatMap(SlackByExtension::slackSide);
    boolean camshaft = drive.shaft(shaft).filter(s -> s.role() == Role.CAMSHAFT).isPresent();
    if (!camshaft || side.isEmpty() || !(toMm >= 0) || chain.tensioner().isEmpty()) {
      return Optional.empty();
    }
    boolean ahead = side.get().to().equals(shaft);
    if (!ahead && !side.get().from().equals(shaft)) {
      return Optional.empty();
    }
    double from = slack.get().extensionLetGo(Reseating.right(chain.name()));
    return from <= toMm
        ? Optional.empty()
        : Optional.of(between(slack.get(), chain, shaft, ahead, from, toMm, clearance));
  }

  private static PressBack between(
      SlackByExtension slack,
      Chain chain,
      String shaft,
      boolean ahead,
      double from,
      double to,
      Optional<DoubleUnaryOperator> clearance) {
    double perMmOfChain = 360 / (chain.sprocketOn(shaft).orElseThrow().teeth() * chain.pitchMm());
    DoubleUnaryOperator turned =
        e -> slack.slackSideMm(e, Reseating.right(chain.name())) * perMmOfChain;
    double small = Math.min(SMALL_MM, (from - to) / 2);
    double turn = turned.applyAsDouble(to) - turned.applyAsDouble(from);
    return new PressBack(
        shaft,
        ahead ? Lag.ADVANCED : Lag.RETARDED,
        from,
        to,
        turn,
        (turned.applyAsDouble(from - small) - turned.applyAsDouble(from)) / small,
        clearance.map(c -> nearest(c, ahead ? turn : -turn)));
  }

  private static Nearest nearest(DoubleUnaryOperator clearance, double turn) {
    int steps = (int) Math.ceil(Math.abs(turn) / LOOK_DEGREES);
    return IntStream.rangeClosed(0, Math.max(1, steps))
        .mapToDouble(i -> turn * i / Math.max(1, steps))
        .mapToObj(at -> new Nearest(clearance.applyAsDouble(at), at))
        .reduce((a, b) -> b.clearanceMm() < a.clearanceMm() ? b : a)
        .orElseThrow();
  }
}
