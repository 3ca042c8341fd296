package tightside.timing;

import java.util.List;

/**
 * One way in which a chain can lie on its sprockets, told by the sprockets that sit off their
 * place. The driving sprocket k teeth ahead is the same lay as every other k teeth behind.
 *
 * @param moved in the direction of travel; none if everything sits where the marks say
 * @param off the shafts that stand off their place because of it, in the order of the model
 */
public record Lay(List<Moved> moved, List<ShaftTiming> off) {

  /** No sprocket is put back further off than this, in teeth. Common practice, no source. */
  public static final int MOST_TEETH = 3;

  /**
   * A sprocket off its place.
   *
   * @param teeth further ahead on its chain (+) or behind (-) than it belongs; never 0
   */
  public record Moved(String shaft, int teeth) {}

  public Lay {
    moved = List.copyOf(moved);
    off = List.copyOf(off);
  }

  /** How far the sprocket of a shaft sits off, teeth. */
  public int teethOf(String shaft) {
    return moved.stream().filter(m -> m.shaft().equals(shaft)).mapToInt(Moved::teeth).sum();
  }

  /** The most teeth that one sprocket sits off. */
  public int mostTeeth() {
    return moved.stream().mapToInt(m -> Math.abs(m.teeth())).max().orElse(0);
  }
}
