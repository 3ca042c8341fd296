package tightside.session;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Heat;
import tightside.drive.Limits;
import tightside.engine.Engine;
import tightside.engine.Phaser;
import tightside.timing.LockingPlay;

/**
 * What a person says of the job while the chain is slack.
 *
 * @param engagementMm how far a sprocket sits on its nose
 * @param playDegrees of the locking tools, camshaft degrees; nothing where nobody knows
 * @param heat block and chain, cold and hot
 * @param engine what the model says of valves and springs
 * @param phasers by camshaft, as the model has them
 */
public record SlackSetup(
    double engagementMm,
    OptionalDouble playDegrees,
    Heat heat,
    Optional<Engine> engine,
    Map<String, Phaser> phasers) {

  /** How far a sprocket can sit on its nose. */
  public static final Limits ENGAGEMENT_MM = new Limits(0, 200, "mm");

  /** The temperatures that are taken. */
  public static final Limits CELSIUS = new Limits(-60, 300, "degrees Celsius");

  /** Growth as it is typed: millionths per kelvin. */
  public static final Limits GROWTH = new Limits(0, 100, "millionths per kelvin");

  /** A pilot's length where nobody has measured, mm; from memory. */
  private static final double USUAL_ENGAGEMENT_MM = 8;

  public SlackSetup {
    ENGAGEMENT_MM.refuseOutside("the engagement", engagementMm);
    phasers = Map.copyOf(phasers);
    playDegrees.ifPresent(p -> Limits.LOCKING_PLAY_DEGREES.refuseOutside("the play", p));
  }

  /** All from memory: an aluminium block, play unknown, nothing known of valves. */
  public static SlackSetup usual() {
    return of(OptionalDouble.empty(), Optional.empty(), Map.of());
  }

  /** As the model has it, and the rest from memory. */
  public static SlackSetup of(
      OptionalDouble playDegrees, Optional<Engine> engine, Map<String, Phaser> phasers) {
    return new SlackSetup(USUAL_ENGAGEMENT_MM, playDegrees, Heat.aluminiumBlock(), engine, phasers);
  }

  SlackSetup engaged(double otherMm) {
    return new SlackSetup(otherMm, playDegrees, heat, engine, phasers);
  }

  SlackSetup playing(OptionalDouble otherDegrees) {
    return new SlackSetup(engagementMm, otherDegrees, heat, engine, phasers);
  }

  SlackSetup heated(Heat other) {
    return new SlackSetup(engagementMm, playDegrees, other, engine, phasers);
  }

  /** With nothing said of valves and phasers: those were another drive's. */
  SlackSetup withoutEngine() {
    return new SlackSetup(engagementMm, playDegrees, heat, Optional.empty(), Map.of());
  }

  /** With a shaft called otherwise. */
  SlackSetup renamed(String before, String after) {
    Map<String, Phaser> others = new HashMap<>();
    phasers.forEach((shaft, phaser) -> others.put(shaft.equals(before) ? after : shaft, phaser));
    return new SlackSetup(
        engagementMm, playDegrees, heat, engine.map(e -> e.renamed(before, after)), others);
  }

  LockingPlay play() {
    return new LockingPlay(playDegrees);
  }
}
