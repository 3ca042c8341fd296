package tightside.files;

import java.util.Map;
import java.util.Optional;
import tightside.drive.Plan;
import tightside.engine.Engine;
import tightside.engine.Phaser;
import tightside.job.Job;

/**
 * What a file says of a drive that is not one yet: every part was read, together they can't be
 * used. It can be drawn further.
 *
 * @param phasers by the shaft that carries one
 */
public record Unfinished(
    Plan plan, Optional<Engine> engine, Map<String, Phaser> phasers, Optional<Job> job) {

  public Unfinished {
    phasers = Map.copyOf(phasers);
  }
}
