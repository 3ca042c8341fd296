package tightside.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The marked sprockets of a loop, numbered in the direction of travel, and what was counted between
 * them. Strand i leaves sprocket i; the last one arrives at sprocket 0.
 *
 * <p>A sprocket that sits k teeth ahead gives the strand that arrives there k links and takes k
 * from the one that leaves. So every counted strand ties the two sprockets at its ends together:
 * what it gained is the teeth of the later less the teeth of the earlier.
 *
 * @param size how many sprockets
 * @param gained links more than belong there, by strand; strands not counted are left out. If all
 *     are counted the gains must add up to 0.
 */
record CountedLoop(int size, Map<Integer, Long> gained) {

  CountedLoop {
    gained = Map.copyOf(gained);
    if (gained.size() == size && sum(gained) != 0) {
      throw new IllegalArgumentException("a whole loop can't gain links: " + gained);
    }
  }

  static long sum(Map<Integer, Long> gained) {
    return gained.values().stream().mapToLong(Long::longValue).sum();
  }

  /**
   * Sprockets that counted strands tie together.
   *
   * @param members in the direction of travel
   * @param teeth how far each sits off, up to the same number for all
   */
  record Tied(List<Integer> members, List<Long> teeth) {

    /**
     * The ways to say how far these sit off that move the fewest, and of those by the fewest teeth.
     * Without more than {@link Lay#MOST_TEETH} on any where that can be.
     */
    List<List<Long>> simplest() {
      Comparator<List<Long>> simplicity =
          Comparator.<List<Long>>comparingLong(t -> t.stream().filter(k -> k != 0).count())
              .thenComparingLong(t -> t.stream().mapToLong(Math::abs).sum());
      List<List<Long>> ways = shifts().mapToObj(this::shifted).sorted(simplicity).toList();
      return ways.stream().filter(w -> simplicity.compare(w, ways.get(0)) == 0).toList();
    }

    private LongStream shifts() {
      long least = teeth.stream().mapToLong(Long::longValue).min().orElseThrow();
      long most = teeth.stream().mapToLong(Long::longValue).max().orElseThrow();
      return most - least <= 2 * Lay.MOST_TEETH
          ? LongStream.rangeClosed(most - Lay.MOST_TEETH, least + Lay.MOST_TEETH)
          : teeth.stream().mapToLong(Long::longValue).distinct();
    }

    private List<Long> shifted(long by) {
      return teeth.stream().map(k -> k - by).toList();
    }
  }

  /** The groups that hang together; between them the counts say nothing. */
  List<Tied> tied() {
    List<Tied> groups = new ArrayList<>();
    List<Integer> starts = starts();
    for (int g = 0; g < starts.size(); g++) {
      int end = g + 1 < starts.size() ? starts.get(g + 1) : starts.get(0) + size;
      groups.add(tied(starts.get(g), end));
    }
    return groups;
  }

  /** Sprockets at which an uncounted strand arrives; the first one if there is none. */
  private List<Integer> starts() {
    List<Integer> starts =
        IntStream.range(0, size)
            .filter(i -> !gained.containsKey((i + size - 1) % size))
            .boxed()
            .toList();
    return starts.isEmpty() && size > 0 ? List.of(0) : starts;
  }

  private Tied tied(int from, int end) {
    List<Integer> members = new ArrayList<>();
    List<Long> teeth = new ArrayList<>();
    long k = 0;
    for (int i = from; i < end; i++) {
      members.add(i % size);
      teeth.add(k);
      k += i + 1 < end ? gained.get(i % size) : 0;
    }
    return new Tied(members, teeth);
  }

  /** The simplest explanations of all the counts: for each, the teeth of every sprocket. */
  List<long[]> simplest() {
    List<long[]> found = List.of(new long[size]);
    for (Tied group : tied()) {
      found =
          found.stream()
              .flatMap(rest -> group.simplest().stream().map(way -> with(rest, group, way)))
              .toList();
    }
    return found;
  }

  private static long[] with(long[] rest, Tied group, List<Long> way) {
    long[] all = rest.clone();
    for (int i = 0; i < way.size(); i++) {
      all[group.members().get(i)] = way.get(i);
    }
    return all;
  }
}
