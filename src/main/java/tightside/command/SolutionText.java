package tightside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tightside.drive.ChainFit;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.Strand;
import tightside.timing.StretchLimit;
import tightside.words.Numbers;
import tightside.words.Sentences;
import tightside.words.UnknownWords;

/** A solution as a technician reads it. */
final class SolutionText {

  private final Solver solver;
  private final Solution solution;

  SolutionText(Solver solver, Solution solution) {
    this.solver = solver;
    this.solution = solution;
  }

  List<String> title() {
    List<String> lines = new ArrayList<>(List.of(solution.drive().name()));
    solution.drive().about().strip().lines().forEach(lines::add);
    if (solution.drive().countedOnly()) {
      lines.add(Sentences.countedOnly());
    }
    lines.add("");
    return lines;
  }

  /** Where every shaft stands. */
  List<String> shafts() {
    List<String> lines = new ArrayList<>();
    solution.shafts().forEach(s -> lines.add("  " + Sentences.timing(solution.drive(), s)));
    solution.untimed().forEach(shaft -> lines.add("  " + Sentences.untimed(shaft)));
    lines.add("");
    return lines;
  }

  /** Every chain, counted as it belongs. */
  List<String> chains() {
    return chains((chain, i) -> Sentences.count(chain.strands().get(i)));
  }

  /** Every chain as a person would count it now, against the drive put right. */
  List<String> chainsAgainst(Solution right) {
    return chains(
        (chain, i) ->
            Sentences.countNow(
                chain.strands().get(i),
                right.chain(chain.chain().name()).orElseThrow().strands().get(i)));
  }

  private List<String> chains(CountWords counted) {
    List<String> lines = new ArrayList<>();
    for (ChainSolution chain : solution.chains()) {
      lines.add(Sentences.chain(chain));
      if (chain.fit().path().isEmpty() && !chain.chain().countedOnly()) {
        lines.add("  " + Sentences.noWayRound());
      } else {
        addPath(lines, chain, counted);
      }
      lines.add("  " + Sentences.realign(chain));
      lines.add("");
    }
    return lines;
  }

  private void addPath(List<String> lines, ChainSolution chain, CountWords counted) {
    for (int i = 0; i < chain.strands().size(); i++) {
      Strand strand = chain.strands().get(i);
      lines.add("  " + counted.of(chain, i));
      lines.add("      (" + Sentences.side(strand) + ")");
      if (!strand.trusted()) {
        lines.add("      " + Sentences.notTrusted(strand));
      }
    }
    lines.add("  Together " + Numbers.count(sum(chain), "link") + ": the whole chain.");
    lines.add("  " + tension(chain));
  }

  /** How the count of a chain's strand is said. */
  private interface CountWords {
    String of(ChainSolution chain, int strand);
  }

  private static long sum(ChainSolution chain) {
    return chain.strands().stream().mapToLong(Strand::links).sum();
  }

  private String tension(ChainSolution chain) {
    if (chain.chain().countedOnly()) {
      return Sentences.extensionNotKnown(chain.chain().tensionerName());
    }
    if (chain.tensioner().isEmpty()) {
      double slack = chain.fit() instanceof ChainFit.Solved solved ? solved.slackMm() : 0;
      return Sentences.freeSlack(slack);
    }
    OptionalDouble limit = StretchLimit.of(solver.drive(), chain.chain());
    return Sentences.tensioner(chain.tensioner().get(), limit);
  }

  /** What is not known, and the caution. */
  List<String> end() {
    List<String> lines = new ArrayList<>();
    if (!solution.unknowns().isEmpty()) {
      lines.add("What this does not know:");
      solution.unknowns().forEach(u -> lines.add("  " + UnknownWords.of(u)));
      lines.add("");
    }
    lines.add(Sentences.caution());
    return lines;
  }
}
