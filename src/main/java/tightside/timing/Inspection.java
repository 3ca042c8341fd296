package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Finding;
import tightside.drive.Finding.Id;
import tightside.drive.Part;
import tightside.drive.TautPath;

/** Whether new chains fit their drive, and what a person should look at where they do. */
public final class Inspection {

  /** A sprocket that the chain wraps by fewer teeth than this may be jumped (common practice). */
  public static final double FEW_TEETH = 4;

  /** Past this misfit a taut strand's marks lie visibly off their links, in pitches. */
  public static final double MISFIT_LIMIT = 0.1;

  private Inspection() {}

  /** All findings of a drive at its reference position, chain by chain in the model's order. */
  public static List<Finding> of(Solver solver) {
    List<Finding> findings = new ArrayList<>();
    for (ChainSolution solution : solver.solve(State.reference()).chains()) {
      findings.addAll(of(solution));
    }
    return findings;
  }

  private static List<Finding> of(ChainSolution solution) {
    Chain chain = solution.chain();
    List<Finding> findings = new ArrayList<>();
    if (chain.links() % 2 == 1) {
      findings.add(links(Id.ODD_LINKS, chain, Map.of("links", chain.links())));
    }
    if (chain.countedOnly()) {
      return findings;
    }
    ChainFit fit = solution.whenNew();
    if (!(fit instanceof ChainFit.Solved solved)) {
      findings.add(unfit(chain, fit));
      return findings;
    }
    solution.marksOff().forEach(off -> findings.add(markOff(chain, off)));
    findings.addAll(wraps(chain, solved.taut()));
    solution.strands().forEach(strand -> findings.addAll(strand(chain, strand)));
    if (chain.tensioner().isEmpty() && solved.slackMm() > chain.pitchMm()) {
      findings.add(
          links(
              Id.MUCH_FREE_SLACK,
              chain,
              Map.of(
                  "slack",
                  solved.slackMm(),
                  "pitch",
                  chain.pitchMm(),
                  "links",
                  chain.links(),
                  "enough",
                  chain.links() - (long) Math.floor(solved.slackMm() / chain.pitchMm()))));
    }
    return findings;
  }

  private static Finding links(Id id, Chain chain, Map<String, Object> facts) {
    return new Finding(id, Part.chain(chain.name()).at("links"), facts);
  }

  private static Finding unfit(Chain chain, ChainFit fit) {
    if (fit instanceof ChainFit.TooShort tooShort) {
      return links(
          Id.CHAIN_TOO_SHORT,
          chain,
          Map.of(
              "links", chain.links(), "by", tooShort.byMm(), "pitches", tooShort.taut().pitches()));
    }
    if (fit instanceof ChainFit.OutOfTravel out) {
      return links(
          Id.OUT_OF_TRAVEL,
          chain,
          Map.of("links", chain.links(), "left", out.slackLeftMm(), "travel", out.travelMm()));
    }
    if (fit instanceof ChainFit.NoRoom room) {
      int next = (room.from() + 1) % chain.route().size();
      return new Finding(
          Id.NO_ROOM,
          Part.route(chain.name(), next),
          Map.of("from", shaft(chain, room.from()), "to", shaft(chain, room.to())));
    }
    int place = ((ChainFit.SprocketMissed) fit).place();
    return new Finding(
        Id.SPROCKET_MISSED,
        Part.route(chain.name(), place),
        Map.of("shaft", shaft(chain, place), "chain", chain.name()));
  }

  private static String shaft(Chain chain, int place) {
    return chain.sprocketAt(place).shaft();
  }

  private static Finding markOff(Chain chain, MarkOff off) {
    return new Finding(
        Id.MARK_OFF_CHAIN,
        Part.route(chain.name(), off.place()).at("mark"),
        Map.of(
            "shaft", off.shaft(),
            "mark", off.mark().degrees(),
            "from", off.from().degrees(),
            "to", off.to().degrees()));
  }

  private static List<Finding> wraps(Chain chain, TautPath path) {
    List<Finding> findings = new ArrayList<>();
    for (int place : chain.sprocketPlaces()) {
      double teeth = path.wrap(place).degrees() * chain.sprocketAt(place).teeth() / 360;
      if (teeth < FEW_TEETH) {
        findings.add(
            new Finding(
                Id.FEW_LINKS_OF_WRAP,
                Part.route(chain.name(), place),
                Map.of("shaft", shaft(chain, place), "teeth", teeth)));
      }
    }
    return findings;
  }

  private static List<Finding> strand(Chain chain, Strand strand) {
    double misfit = strand.taut() ? strand.misfit().orElse(0) : 0;
    if (Math.abs(misfit) <= MISFIT_LIMIT) {
      return List.of();
    }
    return List.of(
        new Finding(
            strand.trusted() ? Id.MISFIT : Id.COUNT_NOT_TRUSTED,
            Part.route(chain.name(), strand.toPlace()).at("mark"),
            Map.of(
                "from", strand.from(),
                "to", strand.to(),
                "pitches", strand.pitches(),
                "links", strand.links())));
  }
}
