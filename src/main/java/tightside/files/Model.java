package tightside.files;

import java.util.Map;
import java.util.Optional;
import tightside.drive.Drive;
import tightside.drive.Limits;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.drive.Texts;
import tightside.engine.Engine;
import tightside.engine.Phaser;
import tightside.job.Job;

/**
 * All that a model file says.
 *
 * @param drive as drawn
 * @param phasers by the camshaft that carries one
 * @param measured what was measured on the engine, if the drawing is a sketch
 */
public record Model(
    Drive drive,
    Optional<Engine> engine,
    Map<String, Phaser> phasers,
    Optional<Job> job,
    Optional<MeasuredDrive> measured) {

  public Model {
    phasers = Map.copyOf(phasers);
    if (!Texts.title(drive.name()) || !Texts.prose(drive.about())) {
      throw new IllegalArgumentException("a model has a title of one line, and printable text");
    }
    Limits.SHAFTS.refuseOutside("shafts", drive.shafts().size());
    Limits.CHAINS.refuseOutside("chains", drive.chains().size());
    drive.chains().forEach(c -> Limits.ROUTE.refuseOutside("route", c.route().size()));
    engine.ifPresent(e -> Limits.VALVES.refuseOutside("valves", e.valves().size()));
    for (String shaft : phasers.keySet()) {
      refuseNoCamshaft(drive, shaft, "phaser");
    }
    engine.ifPresent(e -> e.valves().forEach(v -> refuseNoCamshaft(drive, v.shaft(), "valve")));
  }

  /** A drive that is what it is drawn. */
  public Model(
      Drive drive, Optional<Engine> engine, Map<String, Phaser> phasers, Optional<Job> job) {
    this(drive, engine, phasers, job, Optional.empty());
  }

  /** The same model with the drive that the measurements make, where there are any. */
  public Model adjusted() {
    return measured
        .map(m -> new Model(m.adjustment().best(), engine, phasers, job, measured))
        .orElse(this);
  }

  /** A drive with nothing said about its engine or the work on it. */
  public static Model of(Drive drive) {
    return new Model(drive, Optional.empty(), Map.of(), Optional.empty());
  }

  private static void refuseNoCamshaft(Drive drive, String shaft, String what) {
    if (drive.shaft(shaft).map(Shaft::role).orElse(Role.IDLER) != Role.CAMSHAFT) {
      throw new IllegalArgumentException("a " + what + " needs a camshaft, not " + shaft);
    }
  }
}
