package tightside.readings;

import java.util.Optional;
import tightside.drive.Seen;
import tightside.timing.Strand;

/** Counting the links from mark to mark. */
public record CountStrand(String chain, String from, String to) implements Check {
  @Override
  public Kind kind() {
    return Kind.COUNT;
  }

  @Override
  public Seen access(Situation situation) {
    return situation.strand(chain, from, to).map(Strand::seen).orElse(Seen.NEVER);
  }

  @Override
  public Optional<Shown> shows(Situation situation, Moment moment) {
    return situation
        .strand(chain, from, to)
        .map(strand -> new Shown(strand.links(), Shown.Unit.LINKS));
  }

  @Override
  public double noticeable(Situation right, Shown reading) {
    return 0.5;
  }
}
