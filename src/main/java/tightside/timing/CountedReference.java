package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.ChainFit;

/** One new chain at the reference position, of which the links between its marks are known. */
record CountedReference(MarkedRoute route) implements Datum {

  static CountedReference of(Chain chain) {
    return new CountedReference(MarkedRoute.of(chain));
  }

  @Override
  public Chain chain() {
    return route.chain();
  }

  @Override
  public ChainFit fit() {
    return new ChainFit.CountedOnly();
  }

  @Override
  public List<MarkOff> marksOff() {
    return List.of();
  }

  @Override
  public boolean sound() {
    return true;
  }

  @Override
  public List<Strand> strands() {
    List<Integer> counts = chain().counts().orElseThrow();
    List<MarkedRoute.Reach> reaches = route.reaches();
    List<Strand> strands = new ArrayList<>();
    for (int i = 0; i < reaches.size(); i++) {
      MarkedRoute.Reach reach = reaches.get(i);
      strands.add(
          new Strand(
              chain().sprocketAt(reach.from()).shaft(),
              chain().sprocketAt(reach.to()).shaft(),
              reach.from(),
              reach.to(),
              OptionalDouble.empty(),
              counts.get(i),
              OptionalDouble.empty(),
              reach.taut(),
              reach.seen()));
    }
    return strands;
  }

  @Override
  public ChainFit fit(double stretchPercent, OptionalDouble heldMm) {
    return fit();
  }

  @Override
  public Optional<Settling> settling(ChainFit now, double stretchPercent) {
    return Optional.of(new RunSettling(route, stretchPercent));
  }
}
