package tightside.second;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the second solver is told of a drive: plain numbers in mm and degrees.
 *
 * @param clockwise whether the crankshaft turns so
 * @param crank name of the crankshaft
 * @param loops every chain, in any order
 */
public record Plan(boolean clockwise, String crank, List<Loop> loops) {

  /**
   * A chain.
   *
   * @param route in the direction of travel, from the driving sprocket
   */
  public record Loop(String name, double pitch, int links, double plate, List<Item> route) {}

  /** Something on a route. */
  public sealed interface Item permits Wheel, Rub {
    boolean outside();
  }

  /**
   * A sprocket.
   *
   * @param mark bearing of the marked tooth
   */
  public record Wheel(String shaft, Spot at, int teeth, OptionalDouble mark, boolean outside)
      implements Item {}

  /** A face, pushed or not. */
  public record Rub(Spot start, Spot middle, Spot end, boolean outside, Optional<Push> push)
      implements Item {}

  /**
   * A plunger.
   *
   * @param arm the pivot and the pad of an arm; nothing for a shoe
   */
  public record Push(Optional<Arm> arm, double bearing, double travel) {}

  /** Where an arm turns, and where it is pushed. */
  public record Arm(Spot pivot, Spot pad) {}
}
