package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.engine.Clearance;
import tightside.engine.Nearest;
import tightside.timing.ShaftTiming;
import tightside.timing.TensionerReading;
import tightside.words.Numbers;

/** Two states of the same drive in rows of text: A, which was kept, and B, as it is now. */
public record ComparePage(List<Row> rows) {

  /**
   * One thing in both.
   *
   * @param what with its unit
   */
  public record Row(String what, String a, String b) {

    public boolean differs() {
      return !a.equals(b);
    }
  }

  public ComparePage {
    rows = List.copyOf(rows);
  }

  public static ComparePage of(SessionView a, SessionView b) {
    List<Row> rows = new ArrayList<>();
    for (ShaftTiming shaft : a.solution().shafts()) {
      String crank = a.snapshot().drive().crankshaft().name();
      b.solution()
          .shaft(shaft.shaft())
          .filter(s -> !s.shaft().equals(crank))
          .ifPresent(
              s -> rows.add(new Row(s.shaft() + ", crank degrees", degrees(shaft), degrees(s))));
    }
    for (Chain chain : a.snapshot().drive().chains()) {
      links(rows, a, b, chain.name());
      plunger(rows, a, b, chain.name());
    }
    valves(rows, a, b);
    return new ComparePage(rows);
  }

  private static String degrees(ShaftTiming shaft) {
    return Numbers.signedHundredths(shaft.crankDegrees());
  }

  private static void links(List<Row> rows, SessionView a, SessionView b, String chain) {
    List<StrandRow> ours = a.strandRows(chain);
    List<StrandRow> theirs = b.strandRows(chain);
    for (int i = 0; i < Math.min(ours.size(), theirs.size()); i++) {
      StrandRow row = ours.get(i);
      rows.add(
          new Row(
              "%s to %s, links".formatted(row.from(), row.to()),
              row.links(),
              theirs.get(i).links()));
    }
  }

  private static void plunger(List<Row> rows, SessionView a, SessionView b, String chain) {
    Optional<String> ours = extension(a, chain);
    extension(b, chain)
        .ifPresent(b2 -> rows.add(new Row("plunger of " + chain + ", mm", ours.orElse(""), b2)));
  }

  private static Optional<String> extension(SessionView view, String chain) {
    return view.solution()
        .chain(chain)
        .flatMap(c -> c.tensioner())
        .map(TensionerReading::extensionMm)
        .map(mm -> Numbers.fixed(mm, 1));
  }

  private static void valves(List<Row> rows, SessionView a, SessionView b) {
    if (a.valves().isEmpty() || b.valves().isEmpty()) {
      return;
    }
    List<Clearance> ours = a.valves().get().timed().clearances();
    List<Clearance> theirs = b.valves().get().timed().clearances();
    List<String> names = ValveReading.names(a.valves().get().engine());
    for (int i = 0; i < names.size(); i++) {
      rows.add(
          new Row(names.get(i) + " valve, least room, mm", room(ours.get(i)), room(theirs.get(i))));
    }
    rows.add(new Row("compression, to 1", closed(a), closed(b)));
  }

  private static String room(Clearance clearance) {
    Nearest least = clearance.least();
    return least.contact()
        ? "touches, " + Numbers.fixed(-least.clearanceMm(), 1)
        : Numbers.fixed(least.clearanceMm(), 1);
  }

  private static String closed(SessionView view) {
    var closed = view.valves().orElseThrow().timed().squeeze().closed();
    return closed.isPresent() ? Numbers.fixed(closed.getAsDouble(), 1) : "\u2013";
  }
}
