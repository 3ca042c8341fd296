package tightside.survey;

import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Sprocket;

/** Refuses a survey of another drive. */
public final class Strangers {

  private Strangers() {}

  static void refuse(Drive drive, Survey survey) {
    for (Measurement m : survey.measurements()) {
      for (SurveyPoint point : m.points()) {
        if (!point.in(drive)) {
          throw new IllegalArgumentException("the drive has no point " + point);
        }
      }
      if (!chainOf(drive, m)) {
        throw new IllegalArgumentException("the drive has not what was measured: " + m);
      }
    }
    for (CountedLinks c : survey.counted()) {
      if (!strandOf(drive, c)) {
        throw new IllegalArgumentException("the drive has no strand " + c);
      }
    }
  }

  /** What of a survey a drive still has. */
  static Survey left(Drive drive, Survey survey) {
    return new Survey(
        survey.measurements().stream()
            .filter(m -> chainOf(drive, m) && m.points().stream().allMatch(p -> p.in(drive)))
            .toList(),
        survey.counted().stream().filter(c -> strandOf(drive, c)).toList());
  }

  private static boolean chainOf(Drive drive, Measurement m) {
    if (m instanceof Measurement.Pitches p) {
      return drive.chain(p.chain()).isPresent();
    }
    if (m instanceof Measurement.Extension e) {
      return drive.chain(e.chain()).flatMap(Chain::tensioner).isPresent();
    }
    return !(m instanceof Measurement.Mark mark) || marked(drive, mark.chain(), mark.shaft());
  }

  /** Whether a chain has a marked sprocket on a shaft. */
  public static boolean marked(Drive drive, String chain, String shaft) {
    Optional<Sprocket> sprocket = drive.chain(chain).flatMap(c -> c.sprocketOn(shaft));
    return sprocket.flatMap(Sprocket::mark).isPresent();
  }

  /** Whether a strand of the drive leaves and arrives so. */
  public static boolean strandOf(Drive drive, CountedLinks c) {
    return drive.chain(c.chain()).stream()
        .flatMap(chain -> StrandPlan.of(chain).stream())
        .anyMatch(s -> s.from().equals(c.from()) && s.to().equals(c.to()));
  }
}
