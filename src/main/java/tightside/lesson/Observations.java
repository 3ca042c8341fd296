package tightside.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tightside.drive.Seen;
import tightside.timing.ChainSolution;
import tightside.timing.CountJudge;
import tightside.timing.Strand;
import tightside.timing.TensionerReading;
import tightside.words.Numbers;

/**
 * What a class is told before it predicts: what belongs there, and what a person with the access at
 * hand counts and reads. What can't be seen is said to be so, and not told.
 *
 * @param plainOnly whether only the plain links between the marks are told
 */
record Observations(Truth truth, Seen access, boolean plainOnly) {

  /** The sheet's numbers, from the drive with nothing wrong. */
  List<String> belongs() {
    List<String> lines = new ArrayList<>();
    for (ChainSolution chain : truth.ifRight().chains()) {
      lines.add(
          "Chain %s, %d links; from mark to mark %s."
              .formatted(
                  chain.chain().name(),
                  chain.chain().links(),
                  chain.strands().stream()
                      .map(s -> name(s) + " " + s.links())
                      .collect(Collectors.joining(", "))));
      chain
          .tensioner()
          .filter(this::seen)
          .map(
              t -> "With a new chain the plunger of its tensioner stands %s out.".formatted(out(t)))
          .ifPresent(lines::add);
    }
    return lines;
  }

  List<String> seen() {
    List<String> lines = new ArrayList<>();
    for (ChainSolution chain : truth.solution().chains()) {
      chain.strands().stream().map(this::counted).forEach(lines::add);
      chain
          .tensioner()
          .filter(this::seen)
          .map(t -> plunger(chain.chain().name(), out(t)))
          .ifPresent(lines::add);
    }
    return lines;
  }

  private static String plunger(String chain, String out) {
    return "The plunger of the tensioner of %s stands %s out.".formatted(chain, out);
  }

  private static String name(Strand strand) {
    return strand.from() + " to " + strand.to();
  }

  private static String out(TensionerReading reading) {
    return Numbers.mm(reading.extensionMm());
  }

  private boolean seen(TensionerReading reading) {
    return reading.seen() != Seen.NEVER && reading.seen().compareTo(access) <= 0;
  }

  private String counted(Strand strand) {
    if (!CountJudge.countable(strand, access)) {
      return "From %s: can't be counted %s.".formatted(name(strand), with(access));
    }
    return plainOnly
        ? "From %s you count %s between the two marked ones."
            .formatted(name(strand), Numbers.count(strand.between(), "plain link"))
        : "From %s you count %s from mark to mark, %d plain between."
            .formatted(name(strand), Numbers.count(strand.links(), "link"), strand.between());
  }

  /** What a person can see by. */
  static String with(Seen access) {
    return switch (access) {
      case COVER_ON -> "with the cover on";
      case COVER_OFF -> "with the cover off";
      default -> "with the cover off and a borescope";
    };
  }

  /** All of it in one text, for those who can't see the picture. */
  String spoken() {
    return "The drive as it can be seen %s; nothing here says what is right. %s"
        .formatted(with(access), String.join(" ", seen()));
  }
}
