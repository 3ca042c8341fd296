package tightside.picture;

import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.Gearing;
import tightside.drive.Part;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.PitchCircle;
import tightside.geometry.Rotation;
import tightside.geometry.StraightTooth;
import tightside.geometry.ToothForm;
import tightside.geometry.ToothProfile;
import tightside.timing.ChainSolution;
import tightside.timing.Seat;
import tightside.timing.Solution;

/**
 * One chain as it is to be drawn: everything that the parts of its drawing ask for.
 *
 * @param lay how its links lie; nothing where no chain could be laid
 */
record ChainView(
    Solution solution, Gearing gearing, ChainSolution solved, Plane plane, Optional<ChainLay> lay) {

  static ChainView of(
      Solution solution,
      Gearing gearing,
      ChainSolution solved,
      Plane plane,
      Map<Seat, Integer> whenPainted) {
    return new ChainView(
        solution, gearing, solved, plane, ChainLay.of(solution, solved, whenPainted));
  }

  Chain chain() {
    return solved.chain();
  }

  /** The path that the chain takes, or would take. */
  Optional<TautPath> path() {
    return solved.fit().path();
  }

  Tag tag(Ink ink) {
    return new Tag(ink, Part.chain(chain().name()), plane);
  }

  Tag tag(Ink ink, int place) {
    return new Tag(ink, Part.route(chain().name(), place), plane);
  }

  /** For words, which never fade. */
  Tag words(Ink ink, int place) {
    return new Tag(ink, Part.route(chain().name(), place), Plane.FRONT);
  }

  Vector2D centre(int place) {
    String shaft = chain().sprocketAt(place).shaft();
    return solution.drive().shaft(shaft).orElseThrow().at();
  }

  Rotation sense(int place) {
    return gearing.senseAt(chain(), place);
  }

  /** The mean pitch of the chain as it is, mm. */
  double pitchMm() {
    return chain().pitchStretchedMm(solution.state().stretchOf(chain().name()));
  }

  double plateMm() {
    return chain().plateHeightMm();
  }

  /** The roller as it is drawn: one out of all proportion to its pitch would leave no tooth. */
  double rollerMm() {
    double least = ToothForm.LEAST_ROLLER * pitchMm();
    double most = ToothForm.LARGEST_ROLLER * pitchMm();
    return Math.max(least, Math.min(most, chain().rollerDiameterMm()));
  }

  PitchCircle pitchCircle(int place) {
    return new PitchCircle(chain().sprocketAt(place).teeth(), pitchMm());
  }

  ToothProfile profile(int place) {
    PitchCircle circle = pitchCircle(place);
    return switch (chain().kind()) {
      case ROLLER, BUSH -> ToothForm.mean(circle, rollerMm());
      case TOOTHED -> new StraightTooth(circle, clawMm());
    };
  }

  /** How deep the claws of a toothed chain reach, with room under them, within reason, mm. */
  private double clawMm() {
    return Math.max(0.25 * pitchMm(), Math.min(0.6 * pitchMm(), 0.55 * plateMm()));
  }

  /** How far the shaft has turned from the reference position, its own degrees. */
  double turnedDegrees(int place) {
    return solved.advancePitches() * 360 / chain().sprocketAt(place).teeth();
  }

  /** How far the shaft stands ahead of its place, its own degrees; 0 where that is not known. */
  double errorDegrees(int place) {
    return solution
        .shaft(chain().sprocketAt(place).shaft())
        .map(timing -> timing.shaftDegrees())
        .orElse(0.0);
  }

  /** Where the mark of a sprocket stands. */
  Optional<Bearing> markAt(int place) {
    return rightPlace(place).map(right -> right.plus(errorDegrees(place), sense(place)));
  }

  /** Where the mark should stand at this crank angle. */
  Optional<Bearing> rightPlace(int place) {
    Sprocket sprocket = chain().sprocketAt(place);
    return sprocket.mark().map(mark -> mark.plus(turnedDegrees(place), sense(place)));
  }

  /** The middle of one tooth. */
  Bearing toothAt(int place) {
    Bearing otherwise = new Bearing(0).plus(turnedDegrees(place), sense(place));
    return markAt(place)
        .or(() -> lay.map(l -> l.toothAt(path().orElseThrow(), place)))
        .orElse(otherwise);
  }

  /** From a sprocket's centre to where nothing of it or of the chain round it reaches, mm. */
  double clearRadiusMm(int place) {
    return Math.max(profile(place).tipRadiusMm(), pitchCircle(place).radiusMm() + plateMm() / 2);
  }

  /**
   * Whether an arrow shows which way a sprocket turns: the crankshaft, and what turns otherwise.
   */
  boolean showsTurning(int place) {
    String shaft = chain().sprocketAt(place).shaft();
    return shaft.equals(solution.drive().crankshaft().name())
        || gearing.rotationOf(shaft) != solution.drive().rotation();
  }

  /** How far the plunger is out, mm. */
  double extensionMm() {
    return solved.tensioner().map(reading -> reading.extensionMm()).orElse(0.0);
  }
}
