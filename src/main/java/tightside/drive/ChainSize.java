package tightside.drive;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of a chain apart from the number of its links. A drive with geometry knows all of
 * it; one that is counted only may know any part of it, and the pitch alone is of use there.
 *
 * @param pitchMm pitch when new
 * @param plateHeightMm the pitch line runs half of this away from a face
 * @param rollerDiameterMm roller or bush diameter
 */
public record ChainSize(
    Optional<ChainKind> kind,
    OptionalDouble pitchMm,
    OptionalDouble plateHeightMm,
    OptionalDouble rollerDiameterMm) {

  /** A chain of which nothing was measured. */
  public static final ChainSize UNKNOWN =
      new ChainSize(
          Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  public ChainSize {
    pitchMm.ifPresent(mm -> Limits.PITCH_MM.refuseOutside("pitch", mm));
    plateHeightMm.ifPresent(mm -> Limits.PLATE_HEIGHT_MM.refuseOutside("plate-height", mm));
    rollerDiameterMm.ifPresent(
        mm -> Limits.ROLLER_DIAMETER_MM.refuseOutside("roller-diameter", mm));
  }

  public static ChainSize of(
      ChainKind kind, double pitchMm, double plateHeightMm, double rollerDiameterMm) {
    return new ChainSize(
        Optional.of(kind),
        OptionalDouble.of(pitchMm),
        OptionalDouble.of(plateHeightMm),
        OptionalDouble.of(rollerDiameterMm));
  }

  /** Whether a path could be laid with it. */
  public boolean whole() {
    return kind.isPresent()
        && pitchMm.isPresent()
        && plateHeightMm.isPresent()
        && rollerDiameterMm.isPresent();
  }
}
