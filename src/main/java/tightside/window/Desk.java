package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import tightside.session.Edit;
import tightside.session.History;
import tightside.session.Look;
import tightside.session.Looking;
import tightside.session.SessionView;
import tightside.session.Snapshot;

/**
 * Where the session lies: the one thing in the window that changes. Whoever does something tells
 * the desk, and whoever shows something is told by it.
 */
public final class Desk {

  private final List<Runnable> watchers = new ArrayList<>();
  private History history;
  private SessionView view;

  /** What lay here before a lesson began. */
  private Optional<History> former = Optional.empty();

  Desk(SessionView first) {
    history = History.opened(first.snapshot());
    view = first;
  }

  History history() {
    return history;
  }

  public Snapshot now() {
    return history.now();
  }

  /** What is to be seen now; worked out when it is asked for. */
  SessionView view() {
    view = view.next(history.now());
    return view;
  }

  /** Calls back after every change. */
  void watch(Runnable watcher) {
    watchers.add(watcher);
  }

  /** Takes a step from where the session stands now, as far as the valves let it go. */
  public void act(Function<Snapshot, Edit> step) {
    Edit asked = step.apply(now());
    Edit taken = view.stopped(now(), asked);
    boolean looksAgain = taken != asked || Looking.setOver(now(), asked);
    History next = history.step(taken);
    if (next == history && now().sealed()) {
      watchers.forEach(Runnable::run);
    }
    change(next);
    if (looksAgain) {
      look(look -> Looking.atTouch(view()));
    }
  }

  /** Looks otherwise at the same. */
  public void look(UnaryOperator<Look> other) {
    Look look = other.apply(now().look());
    if (!look.equals(now().look())) {
      change(history.look(look));
    }
  }

  void undo() {
    change(history.undo());
  }

  void redo() {
    change(history.redo());
  }

  /** Begins a lesson; what lay here comes back when it ends. */
  public void begin(Snapshot lesson) {
    former = former.or(() -> Optional.of(history));
    change(History.opened(lesson));
  }

  /** Ends the lesson: all lies here as it did before. */
  void end() {
    former.ifPresent(this::change);
    former = Optional.empty();
  }

  /** Begins anew with another drive, looked at in the same text size. */
  void open(Snapshot snapshot) {
    Look look = snapshot.look();
    int text = now().look().textPercent();
    former = Optional.empty();
    change(History.opened(snapshot.with(new Look(look.selected(), now().look().counting(), text))));
  }

  private void change(History next) {
    if (next != history) {
      history = next;
      watchers.forEach(Runnable::run);
    }
  }
}
