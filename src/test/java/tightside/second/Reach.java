package tightside.second;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The chain from one sprocket to the next, over those faces between that it touches: of every
 * choice of faces, the one that turns round each chosen face its own way and is clear of every
 * other. Fewer faces are tried first.
 *
 * @param touched places of the first sprocket and of the faces touched
 * @param runs that follow each of them
 */
record Reach(List<Integer> touched, List<Run> runs) {

  private static final double CLEAR_MM = 1e-9;

  static Optional<Reach> between(List<Shape> shapes, int first, int last) {
    int faces = last - first - 1;
    for (int size = 0; size <= faces; size++) {
      for (int choice = 0; choice < 1 << faces; choice++) {
        if (Integer.bitCount(choice) == size) {
          Optional<Reach> reach = chosen(shapes, first, last, choice);
          if (reach.isPresent()) {
            return reach;
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Reach> chosen(List<Shape> shapes, int first, int last, int choice) {
    List<Integer> touched = new ArrayList<>(List.of(first));
    List<Run> runs = new ArrayList<>();
    List<Integer> passed = new ArrayList<>();
    for (int i = first + 1; i <= last; i++) {
      if (i < last && (choice >> (i - first - 1) & 1) == 0) {
        passed.add(i);
        continue;
      }
      int from = touched.get(touched.size() - 1);
      Optional<Run> run = Run.between(shapes.get(from), shapes.get(i % shapes.size()));
      if (run.isEmpty() || turnsBack(shapes.get(from), runs, run.get())) {
        return Optional.empty();
      }
      for (int face : passed) {
        if (run.get().blockedBy((Rail) shapes.get(face)) > CLEAR_MM) {
          return Optional.empty();
        }
      }
      passed.clear();
      runs.add(run.get());
      touched.add(i);
    }
    return Optional.of(new Reach(touched.subList(0, touched.size() - 1), runs));
  }

  private static boolean turnsBack(Shape shape, List<Run> before, Run next) {
    return !before.isEmpty()
        && shape.turn(before.get(before.size() - 1).direction(), next.direction()) < 0;
  }
}
