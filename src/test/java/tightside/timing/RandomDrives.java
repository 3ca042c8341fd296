package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.geometry.Rotation;

/**
 * Invented drives of plausible sizes, the same for the same seed: one or two stages, two to five
 * sprockets on a chain, some touched from outside, guides, an arm, a shoe or neither, either way
 * round.
 *
 * <p>What is drawn is kept if the second solver finds that it fits; so a drive that the first one
 * can't solve comes to light instead of being thrown away.
 */
public final class RandomDrives {

  private static final double[] PITCHES_MM = {6.35, 7, 8, 9.525};

  private static final Map<Long, Drive> DRAWN = new ConcurrentHashMap<>();

  private final Random random;
  private int drawn;
  private int kept;

  private RandomDrives(long seed) {
    random = new Random(seed);
  }

  /** The drive of a seed; its name says the seed. */
  public static Drive of(long seed) {
    return DRAWN.computeIfAbsent(seed, s -> new RandomDrives(s).drive(s));
  }

  /** Loops drawn and loops kept for a seed. */
  public static int[] drawnAndKept(long seed) {
    RandomDrives drives = new RandomDrives(seed);
    drives.drive(seed);
    return new int[] {drives.drawn, drives.kept};
  }

  private Drive drive(long seed) {
    Rotation rotation = random.nextBoolean() ? Rotation.CLOCKWISE : Rotation.COUNTERCLOCKWISE;
    Shaft crank = new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0));
    int teeth = 16 + 2 * random.nextInt(5);
    List<Shaft> shafts = new ArrayList<>(List.of(crank));
    List<Chain> chains = new ArrayList<>();
    boolean stages = random.nextInt(3) == 0;
    RandomLoop.Drawn first =
        kept(
            () ->
                loop("main", rotation)
                    .draw(crank, teeth, stages ? Role.IDLER : Role.CAMSHAFT, 2 * teeth));
    shafts.addAll(first.driven());
    chains.add(first.chain());
    if (stages) {
      Shaft jack = first.driven().get(0);
      RandomLoop.Drawn second =
          kept(() -> loop("upper", rotation).draw(jack, teeth, Role.CAMSHAFT, teeth));
      shafts.addAll(second.driven());
      chains.add(second.chain());
    }
    return new Drive("random drive of seed " + seed, "Invented.", rotation, shafts, chains);
  }

  private RandomLoop loop(String name, Rotation travel) {
    return new RandomLoop(random, name, travel, PITCHES_MM[random.nextInt(PITCHES_MM.length)]);
  }

  private RandomLoop.Drawn kept(Supplier<Optional<RandomLoop.Drawn>> draw) {
    for (int i = 0; i < 100_000; i++) {
      drawn++;
      Optional<RandomLoop.Drawn> loop = draw.get();
      if (loop.isPresent()) {
        kept++;
        return loop.get();
      }
    }
    throw new IllegalStateException("no loop fits");
  }
}
