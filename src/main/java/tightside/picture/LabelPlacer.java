package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Puts labels where they hide neither the drive nor one another. */
final class LabelPlacer {

  /** Base line to base line, in ems. */
  static final double LEADING = 1.22;

  /** How far a label goes aside from where it would best be, degrees clockwise; the least first. */
  private static final double[] ASLANT = {0, 30, -30, 55, -55};

  /** Farther outside of the drive than this, in ems, a label is hard to follow back. */
  private static final double FAR = 22;

  private final Draft draft;
  private final double em;
  private final Bounds drive;
  private final List<Bounds> placed = new ArrayList<>();
  private final List<Leader> leaders = new ArrayList<>();

  /** A line from a label to what it names. */
  private record Leader(Vector2D start, Vector2D end) {

    boolean visible(double em) {
      return start.distance(end) > 0.3 * em;
    }

    boolean crosses(Bounds box, double em) {
      if (!box.grown(0.15 * em).overlaps(Bounds.at(start).with(Bounds.at(end)))) {
        return false;
      }
      int steps = (int) Math.ceil(start.distance(end) / (0.25 * em));
      for (int i = 0; i <= steps; i++) {
        if (box.touchedBy(start.lerp(end, steps == 0 ? 0 : i / (double) steps), 0.15 * em)) {
          return true;
        }
      }
      return false;
    }
  }

  LabelPlacer(Draft draft, double em) {
    this.draft = draft;
    this.em = em;
    drive = draft.bounds();
  }

  /** Keeps other labels off a place that has words already. */
  void reserve(Bounds box) {
    placed.add(box);
  }

  /**
   * Writes a label at the first spot that is free and whose line crosses no words; where there is
   * none, outside of everything if that is not far, or else at the first that is free.
   */
  void place(Label label) {
    if (near(label, true)) {
      return;
    }
    Label.Spot best = label.spots().get(0);
    Bounds out = outside(label, best);
    Leader line = leader(out, best);
    boolean good = line.start().distance(line.end()) <= FAR * em && uncrossed(out, line);
    if (good || !near(label, false)) {
      write(label, out, best);
    }
  }

  /** Writes a label at the first of its spots that will do, if one does. */
  private boolean near(Label label, boolean clear) {
    for (double aslant : ASLANT) {
      for (Label.Spot spot : label.spots()) {
        Label.Spot turned = spot.turned(aslant);
        Bounds box = boxAt(label, turned);
        if (free(box) && (!clear || uncrossed(box, leader(box, turned)))) {
          write(label, box, turned);
          return true;
        }
      }
    }
    return false;
  }

  private Bounds boxAt(Label label, Label.Spot spot) {
    double width = label.widthMm(em);
    double height = label.heightMm(em);
    Vector2D away = spot.away();
    double reach = Math.abs(away.getX()) * width / 2 + Math.abs(away.getY()) * height / 2;
    return Bounds.around(spot.names().add(away.multiply(spot.gapMm() + reach)), width, height);
  }

  private Leader leader(Bounds box, Label.Spot spot) {
    Vector2D start = spot.names().add(spot.away().multiply(spot.startMm()));
    return new Leader(start, edgeToward(box.grown(0.25 * em), start));
  }

  /** Whether no line would run through words, neither through these nor from these. */
  private boolean uncrossed(Bounds box, Leader leader) {
    return leaders.stream().noneMatch(other -> other.crosses(box, em))
        && (!leader.visible(em) || placed.stream().noneMatch(other -> leader.crosses(other, em)));
  }

  private boolean free(Bounds box) {
    if (crowded(box)) {
      return false;
    }
    for (Draft.Disc disc : draft.taken()) {
      if (box.touchedBy(disc.centre(), disc.radiusMm())) {
        return false;
      }
    }
    return true;
  }

  private boolean crowded(Bounds box) {
    Bounds room = box.grown(0.3 * em);
    return placed.stream().anyMatch(room::overlaps);
  }

  /** Beside the drive, left or right, as near as may be to the height of what is named. */
  private Bounds outside(Label label, Label.Spot spot) {
    Vector2D names = spot.names();
    double width = label.widthMm(em);
    double height = label.heightMm(em);
    boolean left = names.getX() < drive.centre().getX();
    double x = left ? drive.left() - 1.5 * em - width / 2 : drive.right() + 1.5 * em + width / 2;
    Optional<Bounds> nearest = Optional.empty();
    for (int i = 0; i < 400; i++) {
      for (double y : new double[] {names.getY() + i * em / 2, names.getY() - i * em / 2}) {
        Bounds box = Bounds.around(Vector2D.of(x, y), width, height);
        if (!crowded(box)) {
          if (uncrossed(box, leader(box, spot))) {
            return box;
          }
          nearest = nearest.or(() -> Optional.of(box));
        }
      }
    }
    return nearest.orElseThrow();
  }

  private void write(Label label, Bounds box, Label.Spot spot) {
    placed.add(box);
    Leader leader = leader(box, spot);
    if (leader.visible(em)) {
      leaders.add(leader);
      Tag tag = new Tag(Ink.LEADER, label.rest().part(), label.rest().plane());
      draft.line(tag, leader.start(), leader.end());
      draft.circle(tag, leader.start(), 0.12 * em);
    }
    lines(label, box, spot.names());
  }

  private void lines(Label label, Bounds box, Vector2D names) {
    Shape.Align align = alignOf(box, names);
    double x =
        switch (align) {
          case LEFT -> box.left();
          case MIDDLE -> box.centre().getX();
          case RIGHT -> box.right();
        };
    double y = box.top() - 0.95 * em;
    for (int i = 0; i < label.lines().size(); i++) {
      Tag tag = i == 0 ? label.first() : label.rest();
      draft.text(tag, Vector2D.of(x, y), label.lines().get(i), em, align);
      y -= LEADING * em;
    }
  }

  private static Shape.Align alignOf(Bounds box, Vector2D names) {
    if (names.getX() <= box.left()) {
      return Shape.Align.LEFT;
    }
    return names.getX() >= box.right() ? Shape.Align.RIGHT : Shape.Align.MIDDLE;
  }

  /** Where the line from the middle of a box to a point outside leaves the box. */
  private static Vector2D edgeToward(Bounds box, Vector2D point) {
    Vector2D middle = box.centre();
    Vector2D way = middle.vectorTo(point);
    double across = box.width() / 2 / Math.max(1e-9, Math.abs(way.getX()));
    double up = box.height() / 2 / Math.max(1e-9, Math.abs(way.getY()));
    return middle.add(way.multiply(Math.min(1, Math.min(across, up))));
  }
}
