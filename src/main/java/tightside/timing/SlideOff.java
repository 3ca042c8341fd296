package tightside.timing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tightside.drive.TautPath;
import tightside.geometry.Bow;
import tightside.geometry.StringPiece;

/**
 * The first stage of taking sprockets off: they slide off their noses with the chain on them, which
 * bows sideways. A run bows where one of its ends slides and the other is a sprocket that stays, or
 * a face, whose side lips keep the chain in its plane.
 *
 * @param shafts whose sprockets slide together
 * @param engagementMm how far each has to slide
 * @param strands what each strand needs and has
 * @param enoughTurning whether the slack is enough once these shafts may turn with their sprockets
 */
public record SlideOff(
    Set<String> shafts, double engagementMm, List<Bowed> strands, boolean enoughTurning) {

  /** The most that a sprocket slides, mm; beyond any nose. */
  private static final double MOST_MM = 200;

  /**
   * A strand.
   *
   * @param neededMm chain that its bowed runs take
   * @param hasMm its slack and what the play of the tools gives
   */
  public record Bowed(Strand strand, double neededMm, double hasMm) {
    public boolean enough() {
      return neededMm <= hasMm;
    }
  }

  public SlideOff {
    shafts = Set.copyOf(shafts);
    strands = List.copyOf(strands);
  }

  /**
   * @param shafts of marked sprockets on this chain
   */
  public static SlideOff of(HoldBack hold, Set<String> shafts, double engagementMm) {
    if (!(engagementMm >= 0 && engagementMm <= MOST_MM)) {
      throw new IllegalArgumentException(
          "an engagement lies from 0 to 200 mm, not " + engagementMm);
    }
    Set<Integer> places = new HashSet<>();
    for (int place : hold.chain().sprocketPlaces()) {
      if (shafts.contains(hold.chain().sprocketAt(place).shaft())) {
        places.add(place);
      }
    }
    Map<Integer, Double> extra = extraByLeg(hold.path(), places, engagementMm);
    List<Bowed> strands = new ArrayList<>();
    List<Double> lack = new ArrayList<>();
    for (LooseStrand loose : hold.strands()) {
      double needed =
          StrandLegs.between(hold.path(), loose.strand()).stream()
              .mapToDouble(leg -> extra.getOrDefault(leg, 0.0))
              .sum();
      strands.add(new Bowed(loose.strand(), needed, loose.slackMm() + hold.strandPlayMm()));
      lack.add(needed - loose.slackMm());
    }
    boolean turning =
        LeastTurn.mm(
                hold.strands().stream().map(LooseStrand::strand).toList(),
                lack,
                hold.strandPlayMm(),
                shafts)
            .isPresent();
    return new SlideOff(shafts, engagementMm, strands, turning);
  }

  private static Map<Integer, Double> extraByLeg(
      TautPath path, Set<Integer> sliding, double engagementMm) {
    Map<Integer, Double> extra = new HashMap<>();
    int size = path.legs().size();
    for (int leg = 0; leg < size; leg++) {
      boolean before = sliding.contains(path.legs().get((leg + size - 1) % size).place());
      boolean after = sliding.contains(path.legs().get((leg + 1) % size).place());
      if (path.legs().get(leg).piece() instanceof StringPiece.Straight run && before != after) {
        extra.put(leg, Bow.extraMm(run.lengthMm(), engagementMm));
      }
    }
    return extra;
  }

  /** Chain that all bowed runs take, mm. */
  public double neededMm() {
    return strands.stream().mapToDouble(Bowed::neededMm).sum();
  }

  /** Whether the slack is enough with every shaft locked. */
  public boolean enoughLocked() {
    return strands.stream().allMatch(Bowed::enough);
  }
}
