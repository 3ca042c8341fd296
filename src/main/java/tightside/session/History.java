package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The named steps of a session, and where in them a person stands. Opening another drive begins a
 * new history.
 *
 * @param steps the first is the drive as opened
 * @param position of the step that is shown
 * @param saved position of the step that is saved; none if it can't be reached any more
 */
public record History(List<Edit> steps, int position, OptionalInt saved) {

  public History {
    steps = List.copyOf(steps);
    if (position < 0 || position >= steps.size()) {
      throw new IllegalArgumentException("no step " + position + " of " + steps.size());
    }
  }

  /** A history that begins with what was opened; nothing is left to save. */
  public static History opened(Snapshot snapshot) {
    Edit open = Edit.single("Open %s".formatted(snapshot.source()), snapshot);
    return new History(List.of(open), 0, OptionalInt.of(0));
  }

  /** What is shown. */
  public Snapshot now() {
    return steps.get(position).after();
  }

  /**
   * Takes a step. One that changes nothing is none; one that goes on with the gesture of the last
   * step takes its place, unless that was saved or is left by an undo. A gesture that comes back to
   * where it began is no step either. A lesson lets no step pass that it has to hide from, and none
   * leads back to before its prediction.
   */
  public History step(Edit edit) {
    if (edit.after().equals(now()) || !LessonEdits.allowed(now(), edit.after())) {
      return this;
    }
    if (LessonEdits.closesBehind(now(), edit.after())) {
      return new History(List.of(edit), 0, OptionalInt.empty());
    }
    if (goesOn(edit) && comesBack(edit)) {
      return forgetLast(edit.after().look());
    }
    int kept = goesOn(edit) ? position : position + 1;
    List<Edit> taken = new ArrayList<>(steps.subList(0, kept));
    taken.add(edit);
    boolean reachable = saved.isPresent() && saved.getAsInt() < kept;
    return new History(taken, kept, reachable ? saved : OptionalInt.empty());
  }

  private boolean goesOn(Edit edit) {
    return edit.gesture().isPresent()
        && edit.gesture().equals(steps.get(position).gesture())
        && position == steps.size() - 1
        && !isSaved();
  }

  private boolean comesBack(Edit edit) {
    Snapshot before = steps.get(position - 1).after();
    return before.with(edit.after().look()).equals(edit.after());
  }

  private History forgetLast(Look look) {
    boolean reachable = saved.isPresent() && saved.getAsInt() < position;
    OptionalInt still = reachable ? saved : OptionalInt.empty();
    return new History(steps.subList(0, position), position - 1, still).look(look);
  }

  /** Looks otherwise at what is shown: no step. */
  public History look(Look look) {
    List<Edit> changed = new ArrayList<>(steps);
    Edit shown = steps.get(position);
    changed.set(position, new Edit(shown.name(), shown.gesture(), now().with(look)));
    return new History(changed, position, saved);
  }

  /** The name of the step that undo would take back. */
  public Optional<String> undoName() {
    return position == 0 ? Optional.empty() : Optional.of(steps.get(position).name());
  }

  /** The name of the step that redo would take again. */
  public Optional<String> redoName() {
    return position == steps.size() - 1
        ? Optional.empty()
        : Optional.of(steps.get(position + 1).name());
  }

  /** One step back, looked at as now; this if there is none. */
  public History undo() {
    return undoName().isEmpty() ? this : at(position - 1);
  }

  /** One step on again, looked at as now; this if there is none. */
  public History redo() {
    return redoName().isEmpty() ? this : at(position + 1);
  }

  private History at(int other) {
    return new History(steps, other, saved).look(now().look());
  }

  /** The same with what is shown marked as saved; to be called once it is safe. */
  public History markSaved() {
    return new History(steps, position, OptionalInt.of(position));
  }

  public boolean isSaved() {
    return saved.isPresent() && saved.getAsInt() == position;
  }
}
