package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.timing.Seat;
import tightside.timing.Strand;
import tightside.words.ValveWords;

/**
 * One thing for a class to look at: one number and one question.
 *
 * @param question asked of the class
 * @param number the answer, as short as it goes
 * @param unit what the number is of
 * @param ends the sprockets at the ends of a strand; none for a valve
 * @param valve which valve it is; none for a strand
 */
public record ShowItem(
    String question, String number, String unit, List<Seat> ends, Optional<Integer> valve) {

  public ShowItem {
    ends = List.copyOf(ends);
  }

  /** Whether it is the strand that arrives at what is selected, or belongs to that chain. */
  boolean arrivesAt(Look.Selection chosen) {
    return ends.size() == 2
        && ends.get(1).chain().equals(chosen.chain())
        && chosen.shaft().map(ends.get(1).shaft()::equals).orElse(true);
  }

  /** The strands in the order of the model, then the valves of the cylinder that is looked at. */
  public static List<ShowItem> all(SessionView view) {
    List<ShowItem> items = new ArrayList<>();
    for (Chain chain : view.snapshot().drive().chains()) {
      view.solution()
          .chain(chain.name())
          .ifPresent(c -> c.strands().forEach(s -> items.add(strand(chain.name(), s))));
    }
    int valves = view.snapshot().engine().map(e -> e.valves().size()).orElse(0);
    for (int i = 0; i < valves; i++) {
      items.add(valve(view, i));
    }
    return items;
  }

  /** The one that is shown; the last where there are not so many. */
  public static Optional<ShowItem> shown(SessionView view) {
    List<ShowItem> items = all(view);
    int item = view.snapshot().look().show().item();
    return items.isEmpty()
        ? Optional.empty()
        : Optional.of(items.get(Math.min(item, items.size() - 1)));
  }

  private static ShowItem strand(String chain, Strand strand) {
    return new ShowItem(
        "How many links lie from %s to %s?".formatted(strand.from(), strand.to()),
        Long.toString(strand.links()),
        "links from mark to mark = %s between"
            .formatted(Words.number(strand.between(), "plain link", "plain links")),
        List.of(new Seat(chain, strand.from()), new Seat(chain, strand.to())),
        Optional.empty());
  }

  private static ShowItem valve(SessionView view, int valve) {
    ValveReading reading = ValveReading.of(view, valve).orElseThrow();
    return new ShowItem(
        "How near is the %s to its piston?".formatted(ValveWords.name(reading.now().valve())),
        reading.room(),
        reading.place(),
        List.of(),
        Optional.of(valve));
  }
}
