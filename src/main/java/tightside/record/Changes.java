package tightside.record;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What happened between two states of a job.
 *
 * @param undone whether the second was reached by undo
 */
record Changes(Instant at, boolean undone) {

  /** A note that rests for longer is another note. */
  private static final Duration ONE_NOTE = Duration.ofMinutes(1);

  List<Event> between(Progress before, Progress now) {
    List<Event> events = new ArrayList<>();
    if (before.finished() && !now.finished()) {
      events.add(new Event.Reopened(at));
    }
    steps(before, now).forEach(step -> answers(events, step, before, now));
    if (!before.note().equals(now.note())) {
      events.add(new Event.Noted(at, now.note()));
    }
    if (!before.stop().equals(now.stop())) {
      events.add(
          now.stop()
              .<Event>map(card -> new Event.Stopped(at, card))
              .orElseGet(() -> new Event.WentOn(at, before.stop().orElseThrow())));
    }
    if (now.finished() && !now.leftOpen().equals(before.leftOpen())) {
      events.add(new Event.Finished(at, now.leftOpen().get()));
    }
    return events;
  }

  private static Set<String> steps(Progress before, Progress now) {
    Set<String> steps = new TreeSet<>(before.answers().keySet());
    steps.addAll(now.answers().keySet());
    steps.addAll(before.typed().keySet());
    steps.addAll(now.typed().keySet());
    return steps;
  }

  private void answers(List<Event> events, String step, Progress before, Progress now) {
    Optional<Answer> old = before.answer(step);
    Optional<Answer> fresh = now.answer(step);
    String typed = before.typed().getOrDefault(step, "");
    if (!old.equals(fresh)) {
      events.add(
          old.isPresent() && (undone || fresh.isEmpty())
              ? new Event.TakenBack(at, step, old.get(), fresh)
              : new Event.Entered(at, step, fresh.orElseThrow()));
      typed = "";
    }
    String left = now.typed().getOrDefault(step, "");
    if (!left.equals(typed)) {
      events.add(new Event.Typed(at, step, left));
    }
  }

  /** Whether an event only goes on with what the one before it was about. */
  static boolean goesOn(Event before, Event after) {
    if (before instanceof Event.Typed typed) {
      return after instanceof Event.Typed t && t.step().equals(typed.step())
          || after instanceof Event.Entered e && e.step().equals(typed.step());
    }
    if (before instanceof Event.Remodelled && after instanceof Event.Remodelled) {
      return true;
    }
    return before instanceof Event.Noted
        && after instanceof Event.Noted
        && Duration.between(before.at(), after.at()).abs().compareTo(ONE_NOTE) < 0;
  }
}
