package tightside.reasoning;

import java.util.Map;
import java.util.Optional;
import tightside.drive.Drive;
import tightside.engine.Engine;
import tightside.engine.Phaser;

/**
 * What is reasoned about.
 *
 * @param phasers by camshaft; where none is named, any camshaft may have one
 */
public record Subject(Drive drive, Map<String, Phaser> phasers, Optional<Engine> engine) {

  public Subject {
    phasers = Map.copyOf(phasers);
  }

  public static Subject of(Drive drive) {
    return new Subject(drive, Map.of(), Optional.empty());
  }
}
