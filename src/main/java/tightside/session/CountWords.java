package tightside.session;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.timing.CountJudge;
import tightside.timing.CountVerdict;
import tightside.timing.CountVerdict.Fits;
import tightside.timing.CountVerdict.Misplaced;
import tightside.timing.CountVerdict.SumWrong;
import tightside.timing.CountVerdict.TooFar;
import tightside.timing.Lay;
import tightside.timing.Recount;
import tightside.timing.Strand;

/**
 * The words for a verdict on counts, in one sentence.
 *
 * @param strands as they belong
 * @param cover what can be seen
 */
record CountWords(Drive drive, String chain, List<Strand> strands, Seen cover) {

  String of(CountVerdict verdict) {
    if (verdict instanceof Fits fits) {
      return fits(fits);
    }
    if (verdict instanceof Misplaced misplaced) {
      return misplaced(misplaced);
    }
    if (verdict instanceof SumWrong wrong) {
      return sumWrong(wrong);
    }
    return verdict instanceof TooFar far ? tooFar(far) : nothing();
  }

  private String nothing() {
    if (strands.isEmpty()) {
      return "No count of %s can be judged, because its new chain does not fit.".formatted(chain);
    }
    List<String> countable =
        strands.stream().filter(s -> CountJudge.countable(s, cover)).map(Words::strand).toList();
    return countable.isEmpty()
        ? "No strand of %s can be counted %s.".formatted(chain, Words.with(cover))
        : "Nothing is counted yet on %s; %s can be counted %s."
            .formatted(chain, Words.list(countable, "and"), Words.with(cover));
  }

  private Stream<Strand> counted(CountVerdict verdict) {
    return strands.stream().filter(s -> !verdict.unproved().uncounted().contains(s));
  }

  private String fits(Fits fits) {
    String counted =
        counted(fits)
            .map(s -> Words.strand(s) + " " + Words.links(s.links()))
            .collect(Collectors.joining("; "));
    return fits.unproved().uncounted().isEmpty()
        ? "Every count of %s fits: %s.".formatted(chain, counted)
        : "What is counted of %s fits: %s.".formatted(chain, counted);
  }

  private String misplaced(Misplaced misplaced) {
    Lay first = misplaced.simplest().get(0);
    String wrong =
        counted(misplaced)
            .filter(s -> change(s, first) != 0)
            .map(s -> wrong(s, s.links() + change(s, first)))
            .collect(Collectors.joining("; "));
    String others =
        misplaced.simplest().stream()
            .skip(1)
            .map(other -> other(first, other))
            .collect(Collectors.joining());
    return "On %s %s%s; counted: %s.".formatted(chain, sits(first), others, wrong);
  }

  /** "the exhaust sprocket sits 1 tooth ahead: exhaust 10.0 cam degrees (20.0 crank) advanced". */
  private String sits(Lay lay) {
    List<String> off = lay.off().stream().map(s -> Words.shaft(drive, s)).toList();
    return off.isEmpty() ? Words.sits(lay) : Words.sits(lay) + ": " + Words.list(off, "and");
  }

  /** Another name for the same lay, or another lay that the counts can't tell from it. */
  private String other(Lay first, Lay other) {
    return first.off().equals(other.off())
        ? ", which is the same as if %s".formatted(Words.sits(other))
        : ", or just as simply %s".formatted(sits(other));
  }

  /** Links that a strand has too many under a lay. */
  private static int change(Strand strand, Lay lay) {
    return lay.teethOf(strand.to()) - lay.teethOf(strand.from());
  }

  private static String wrong(Strand strand, long counted) {
    return "%s %s, where %d (%d plain) belong"
        .formatted(Words.strand(strand), Words.links(counted), strand.links(), strand.between());
  }

  private String sumWrong(SumWrong wrong) {
    long links = strands.stream().mapToLong(Strand::links).sum();
    return "The counts of %s add up to %d links, %d too %s for its %d: %s."
        .formatted(
            chain,
            links + wrong.tooMany(),
            Math.abs(wrong.tooMany()),
            wrong.tooMany() > 0 ? "many" : "few",
            links,
            again(wrong.again()));
  }

  private String tooFar(TooFar far) {
    return "The counts of %s would mean that %s, further off than one is put back by mistake: %s."
        .formatted(chain, Words.sits(far.ifRight().get(0)), again(far.again()));
  }

  private static String again(List<Recount> again) {
    return again.stream()
        .findFirst()
        .map(
            r ->
                "count %s again, where %s would mean that %s"
                    .formatted(
                        Words.strand(r.strand()),
                        Words.links(r.wouldBe()),
                        Words.sits(r.otherwise())))
        .orElse("count every strand again");
  }
}
