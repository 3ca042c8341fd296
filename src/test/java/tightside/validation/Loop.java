package tightside.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Outline;
import tightside.geometry.Rotation;
import tightside.geometry.StringPiece;
import tightside.geometry.TautString;

/**
 * A belt round circles, laid by the program's geometry alone: for cases that give radii, not teeth.
 *
 * @param spans the string that leaves each circle
 * @param wraps the turn round each circle
 */
public record Loop(List<TautString> spans, List<StringPiece.Turn> wraps) {

  /** Round circles in the order in which the belt meets them. */
  public static Loop round(List<OrientedCircle> circles) {
    int count = circles.size();
    List<TautString> spans = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Outline from = Outline.of(circles.get(i));
      Outline to = Outline.of(circles.get((i + 1) % count));
      spans.add(TautString.between(from, to, List.of()).orElseThrow());
    }
    List<StringPiece.Turn> wraps = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      OrientedCircle circle = circles.get(i);
      TautString arriving = spans.get((i + count - 1) % count);
      double degrees = arriving.arrival().turnTo(spans.get(i).departure(), circle.sense());
      wraps.add(
          new StringPiece.Turn(i, StringPiece.Spot.ROUND, circle, arriving.arrival(), degrees));
    }
    return new Loop(spans, wraps);
  }

  /** Two circles on a skew line of centres; a crossed belt turns the other way round the second. */
  public static Loop ofTwo(String kind, double radius1, double radius2, double centre) {
    Rotation second =
        switch (kind) {
          case "open" -> Rotation.CLOCKWISE;
          case "crossed" -> Rotation.COUNTERCLOCKWISE;
          default -> throw new IllegalArgumentException("neither open nor crossed: " + kind);
        };
    Vector2D to = Vector2D.of(0.6 * centre, -0.8 * centre);
    return round(
        List.of(
            new OrientedCircle(Vector2D.ZERO, radius1, Rotation.CLOCKWISE),
            new OrientedCircle(to, radius2, second)));
  }

  public double length() {
    return Stream.concat(
            spans.stream().map(TautString::lengthMm),
            wraps.stream().map(StringPiece.Turn::lengthMm))
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  /** The angle through which the belt lies on a circle, radians. */
  public double lap(int circle) {
    return Math.toRadians(wraps.get(circle).degrees());
  }
}
