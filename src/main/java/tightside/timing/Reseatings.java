package tightside.timing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import tightside.drive.Chain;
import tightside.drive.Sprocket;

/** The wrong lays that are worth asking about. */
public final class Reseatings {

  /** Nobody puts a sprocket back further off than this without seeing it. */
  public static final int MOST_TEETH = 3;

  private Reseatings() {}

  /** One marked sprocket wrong, from -3 to +3 teeth, in the order of the route. */
  public static List<Reseating> ofOneSprocket(Chain chain) {
    return shafts(chain).stream()
        .flatMap(shaft -> wrong().mapToObj(k -> Reseating.of(chain.name(), shaft, k)))
        .toList();
  }

  /**
   * One or two marked sprockets wrong, each from -3 to +3 teeth. Of lays that leave the same links
   * in every strand only the first is kept, so each is said with as few sprockets as it takes, and
   * of the driving one only where it must be.
   */
  public static List<Reseating> ofUpToTwoSprockets(Chain chain) {
    List<Reseating> all = new ArrayList<>(ofOneSprocket(chain));
    List<String> shafts = shafts(chain);
    for (int i = shafts.size() - 1; i >= 0; i--) {
      for (int j = i + 1; j < shafts.size(); j++) {
        all.addAll(pairs(chain, shafts.get(i), shafts.get(j)));
      }
    }
    Map<Reseating, Reseating> distinct = new LinkedHashMap<>();
    distinct.put(Reseating.right(chain.name()), Reseating.right(chain.name()));
    all.forEach(lay -> distinct.putIfAbsent(lay.fromDriver(chain), lay));
    return distinct.values().stream().skip(1).toList();
  }

  private static List<Reseating> pairs(Chain chain, String one, String other) {
    return wrong()
        .boxed()
        .flatMap(k -> wrong().mapToObj(m -> new Reseating(chain.name(), Map.of(one, k, other, m))))
        .toList();
  }

  private static List<String> shafts(Chain chain) {
    return chain.sprockets().stream().filter(s -> s.marked()).map(Sprocket::shaft).toList();
  }

  private static IntStream wrong() {
    return IntStream.rangeClosed(-MOST_TEETH, MOST_TEETH).filter(k -> k != 0);
  }
}
