package tightside.geometry;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The outline of one of a sprocket's equal teeth. */
public sealed interface ToothProfile permits ToothForm, StraightTooth {

  int teeth();

  /** From the sprocket's centre to the bottom of a gap, mm. */
  double rootRadiusMm();

  /** From the sprocket's centre to the tip of a tooth, mm. */
  double tipRadiusMm();

  /**
   * The left half of a tooth that points straight up from a sprocket's centre at the origin: from
   * the bottom of the gap on its left to the middle of its tip.
   */
  List<Curve> leftHalf();

  /** The whole tooth, clockwise from the bottom of the gap on its left to the one on its right. */
  default List<Curve> tooth() {
    List<Curve> left = leftHalf();
    Stream<Curve> right =
        IntStream.range(0, left.size()).mapToObj(i -> left.get(left.size() - 1 - i).mirrored());
    return Stream.concat(left.stream(), right).toList();
  }
}
