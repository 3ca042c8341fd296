package tightside.lesson;

import java.util.Optional;
import tightside.drive.Drive;
import tightside.engine.Engine;

/** What a lesson plays on. */
public record Setting(Drive drive, Optional<Engine> engine) {}
