package tightside.timing;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tightside.drive.Joint;
import tightside.drive.Sprocket;

/** Finds what counts leave open. */
record Openness(LoopLays lays) {

  /**
   * @param counted links by strand, that can all be right together
   * @param found the simplest lay that goes with them
   */
  Unproved after(Map<Integer, Long> counted, Lay found) {
    List<Strand> strands = lays.strands();
    List<Strand> uncounted =
        IntStream.range(0, strands.size())
            .filter(i -> !counted.containsKey(i))
            .mapToObj(strands::get)
            .toList();
    List<List<Integer>> loose = loose(counted);
    List<List<String>> together =
        loose.stream().map(group -> group.stream().map(lays::shaft).toList()).toList();
    List<Lay> near =
        loose.stream().flatMap(g -> Stream.of(-1, 1).map(by -> lays.moved(found, g, by))).toList();
    return new Unproved(uncounted, together, near, heldByClamp());
  }

  /** The groups that the counts tie to each other but not to the driving sprocket. */
  private List<List<Integer>> loose(Map<Integer, Long> counted) {
    return lays.loop(counted).tied().stream()
        .map(CountedLoop.Tied::members)
        .filter(members -> lays.driver().filter(members::contains).isEmpty())
        .toList();
  }

  private List<String> heldByClamp() {
    return lays.chain().sprockets().stream()
        .filter(s -> s.joint() == Joint.FRICTION)
        .map(Sprocket::shaft)
        .toList();
  }
}
