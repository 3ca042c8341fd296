package tightside.sheet;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.engine.Engine;
import tightside.engine.Phaser;
import tightside.job.Job;

/**
 * What a sheet is made of: a drive, what is known about it, and what can be seen.
 *
 * @param phasers by camshaft
 * @param cover {@link Seen#COVER_ON}, {@link Seen#COVER_OFF} or {@link Seen#BORESCOPE}, each with
 *     all before it
 */
public record Work(
    Drive drive, Optional<Engine> engine, Map<String, Phaser> phasers, Job job, Seen cover) {

  public Work {
    phasers = Map.copyOf(phasers);
    if (cover == Seen.NEVER) {
      throw new IllegalArgumentException("a sheet is for somebody who can see something");
    }
  }

  OptionalDouble play() {
    return job.lockingToolPlayDegrees();
  }
}
