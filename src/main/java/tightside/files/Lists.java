package tightside.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Limits;
import tightside.files.Node.Scalar.Kind;
import tightside.geometry.FaceCurve;
import tightside.geometry.Tolerance;

/** Reads lists: points, faces, and rows of anything. */
final class Lists {

  private Lists() {}

  /** A list of one or more. */
  static <T> Decoder<List<T>> some(Decoder<T> item) {
    return value -> {
      if (value.node() instanceof Node.Row row && row.items().isEmpty()) {
        value.complain(Fault.LIST_EMPTY);
        return Optional.empty();
      }
      return any(item).decode(value);
    };
  }

  /** A list that may be empty. */
  static <T> Decoder<List<T>> any(Decoder<T> item) {
    return value -> {
      if (!(value.node() instanceof Node.Row row)) {
        value.complain(nothing(value.node()) ? Fault.VALUE_MISSING : Fault.NOT_A_LIST);
        return Optional.empty();
      }
      List<T> items = new ArrayList<>();
      for (Node node : row.items()) {
        item.decode(value.part(node)).ifPresent(items::add);
      }
      return items.size() == row.items().size() ? Optional.of(items) : Optional.empty();
    };
  }

  /** A list of so many, no more and no less. */
  private static <T> Decoder<List<T>> exactly(int wanted, String shape, Decoder<T> item) {
    return value -> {
      if (value.node() instanceof Node.Row row && row.items().size() != wanted) {
        value.complain(
            Fault.LIST_LENGTH,
            Map.of("wanted", wanted, "shape", shape, "count", row.items().size()));
        return Optional.empty();
      }
      return any(item).decode(value);
    };
  }

  /** A point, mm. */
  static Decoder<Vector2D> point() {
    return value ->
        exactly(2, "[x, y]", Numbers.number(Limits.POSITION_MM))
            .decode(value)
            .map(xy -> Vector2D.of(xy.get(0), xy.get(1)));
  }

  /** The three points of a rubbing face, mm. */
  static Decoder<FaceCurve> face() {
    return value -> {
      Optional<List<Vector2D>> points =
          exactly(3, "[[x, y], [x, y], [x, y]]", point()).decode(value);
      if (points.isEmpty()) {
        return Optional.empty();
      }
      Vector2D start = points.get().get(0);
      Vector2D end = points.get().get(2);
      if (start.distance(end) < Tolerance.STRAIGHT_FACE.value()) {
        value.complain(Fault.FACE_WITHOUT_LENGTH, Map.of("least", Tolerance.STRAIGHT_FACE.value()));
        return Optional.empty();
      }
      return Optional.of(new FaceCurve(start, points.get().get(1), end));
    };
  }

  private static boolean nothing(Node node) {
    return node instanceof Node.Scalar scalar && scalar.kind() == Kind.NOTHING;
  }
}
