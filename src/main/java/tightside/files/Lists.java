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

/** Reads lists: points, faces, and rows of sections. No value gives no list. */
final class Lists {

  private Lists() {}

  /** The sections of a list of one or more; those that are none are left out and complained of. */
  static List<SectionReader> sections(Optional<Value> value, Limits many) {
    List<SectionReader> sections = new ArrayList<>();
    for (Value item : upTo(many, value, items(value))) {
      Optional<SectionReader> section = SectionReader.of(Optional.of(item));
      if (section.isPresent()) {
        sections.add(section.get());
      }
    }
    return sections;
  }

  /** The items, or none where there are too many to be meant. */
  private static List<Value> upTo(Limits many, Optional<Value> value, List<Value> items) {
    if (items.size() <= many.most()) {
      return items;
    }
    value.get().complainOfCount(items.size(), many);
    return List.of();
  }

  private static List<Value> items(Optional<Value> value) {
    if (value.isEmpty()) {
      return List.of();
    }
    if (!(value.get().node() instanceof Node.Row row)) {
      boolean nothing = value.get().node() instanceof Node.Scalar s && s.kind() == Kind.NOTHING;
      value.get().complain(nothing ? Fault.VALUE_MISSING : Fault.NOT_A_LIST);
      return List.of();
    }
    if (row.items().isEmpty()) {
      value.get().complain(Fault.LIST_EMPTY);
    }
    List<Value> items = new ArrayList<>();
    for (Node node : row.items()) {
      items.add(value.get().part(node));
    }
    return items;
  }

  /** The items of a list of so many, or none. */
  private static List<Value> items(Optional<Value> value, int wanted, String shape) {
    if (value.isPresent()
        && value.get().node() instanceof Node.Row row
        && row.items().size() != wanted) {
      value
          .get()
          .complain(
              Fault.LIST_LENGTH,
              Map.of("wanted", wanted, "shape", shape, "count", row.items().size()));
      return List.of();
    }
    return items(value);
  }

  /** Numbers, one or more; none if not all of them can be read. */
  static List<Double> numbers(Optional<Value> value, Limits each, Limits many) {
    List<Value> items = upTo(many, value, items(value));
    List<Double> numbers = new ArrayList<>();
    for (Value item : items) {
      Optional<Double> number = Numbers.number(Optional.of(item), each);
      if (number.isPresent()) {
        numbers.add(number.get());
      }
    }
    return numbers.size() == items.size() ? numbers : List.of();
  }

  /** Whole numbers, one or more; none if not all of them can be read. */
  static List<Integer> counts(Optional<Value> value, Limits each, Limits many) {
    List<Value> items = upTo(many, value, items(value));
    List<Integer> counts = new ArrayList<>();
    for (Value item : items) {
      Optional<Integer> count = Numbers.count(Optional.of(item), each);
      if (count.isPresent()) {
        counts.add(count.get());
      }
    }
    return counts.size() == items.size() ? counts : List.of();
  }

  /** A point, mm. */
  static Optional<Vector2D> point(Optional<Value> value) {
    List<Double> numbers = new ArrayList<>();
    for (Value item : items(value, 2, "[x, y]")) {
      Optional<Double> number = Numbers.number(Optional.of(item), Limits.POSITION_MM);
      if (number.isPresent()) {
        numbers.add(number.get());
      }
    }
    return numbers.size() == 2
        ? Optional.of(Vector2D.of(numbers.get(0), numbers.get(1)))
        : Optional.empty();
  }

  /** The two values of a list of two; none if it is no such list. */
  static List<Value> pair(Optional<Value> value, String shape) {
    return items(value, 2, shape);
  }

  /** The three points of a rubbing face, mm. */
  static Optional<FaceCurve> face(Optional<Value> value) {
    List<Vector2D> points = new ArrayList<>();
    for (Value item : items(value, 3, "[[x, y], [x, y], [x, y]]")) {
      Optional<Vector2D> point = point(Optional.of(item));
      if (point.isPresent()) {
        points.add(point.get());
      }
    }
    if (points.size() < 3) {
      return Optional.empty();
    }
    double least = Tolerance.STRAIGHT_FACE.value();
    if (points.get(0).distance(points.get(2)) < least) {
      value.get().complain(Fault.FACE_WITHOUT_LENGTH, Map.of("least", least));
      return Optional.empty();
    }
    return Optional.of(new FaceCurve(points.get(0), points.get(1), points.get(2)));
  }
}
