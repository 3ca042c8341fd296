package tightside.timing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import tightside.drive.Chain;
import tightside.drive.ChainInPlace;
import tightside.drive.Drive;
import tightside.drive.TautPath;
import tightside.geometry.Tolerance;

/**
 * A chain with its tensioner held back and every shaft locked at the reference position.
 *
 * @param extensionMm at which the plunger is held; 0 without a tensioner
 * @param path the taut path with the plunger there
 * @param slackMm chain that is over in the whole loop; below zero the plunger can't stand there
 * @param strands in the direction of travel from the driving sprocket; their slacks add up to the
 *     loop's
 * @param strandPlayMm what a strand may lack and still be laid, by the play of the locking tools
 */
public record HoldBack(
    Drive drive,
    ChainInPlace inPlace,
    double extensionMm,
    TautPath path,
    double slackMm,
    List<LooseStrand> strands,
    double strandPlayMm)
    implements HeldBack {

  public HoldBack {
    strands = List.copyOf(strands);
  }

  public Chain chain() {
    return inPlace.chain();
  }

  /** The chain's mean pitch as it is, mm. */
  public double pitchMm() {
    return path.pitchMm();
  }

  /** The strand that arrives at a marked sprocket. */
  public Optional<LooseStrand> arriving(String shaft) {
    return strands.stream().filter(s -> s.strand().to().equals(shaft)).findFirst();
  }

  /** The strand that leaves a marked sprocket. */
  public Optional<LooseStrand> leaving(String shaft) {
    return strands.stream().filter(s -> s.strand().from().equals(shaft)).findFirst();
  }

  /** One marked sprocket wrong, from -3 to +3 teeth, in the order of the route. */
  public List<WrongLay> reseats() {
    return Reseatings.ofOneSprocket(chain()).stream().map(this::judge).toList();
  }

  /** One or two marked sprockets wrong, each lay once. */
  public List<WrongLay> wrongLays() {
    return Reseatings.ofUpToTwoSprockets(chain()).stream().map(this::judge).toList();
  }

  /** Whether a lay can come about with every shaft locked. */
  public WrongLay judge(Reseating lay) {
    List<Double> lack = strands.stream().map(s -> -s.slackMm(lay, pitchMm())).toList();
    int worst =
        IntStream.range(0, lack.size())
            .reduce((a, b) -> lack.get(b) > lack.get(a) ? b : a)
            .orElse(-1);
    boolean possible = worst < 0 || !Tolerance.TOUCH.exceededBy(lack.get(worst) - strandPlayMm);
    return new WrongLay(
        lay,
        possible,
        possible ? 0 : lack.get(worst),
        possible ? Optional.empty() : Optional.of(strands.get(worst).strand()),
        turns(lay, lack, possible));
  }

  private Map<String, Double> turns(Reseating lay, List<Double> lack, boolean possible) {
    OptionalDouble travel =
        possible
            ? OptionalDouble.of(0)
            : LeastTurn.mm(
                strands.stream().map(LooseStrand::strand).toList(),
                lack,
                strandPlayMm,
                lay.teeth().keySet());
    Map<String, Double> turns = new HashMap<>();
    if (travel.isPresent()) {
      lay.teeth()
          .keySet()
          .forEach(shaft -> turns.put(shaft, travel.getAsDouble() * degreesPerMm(shaft)));
    }
    return turns;
  }

  /** How far a shaft turns for one mm of chain, its own degrees: 360 / (z p). */
  public double degreesPerMm(String shaft) {
    return 360 / (chain().sprocketOn(shaft).orElseThrow().teeth() * pitchMm());
  }
}
