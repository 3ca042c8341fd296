package tightside.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.drive.Seen;

/**
 * All that happened in a job, in order. It follows the job as it stands by adding what has changed.
 */
public record JobRecord(Head head, List<Event> events) {

  public JobRecord {
    events = List.copyOf(events);
  }

  public static JobRecord begun(Head head) {
    return new JobRecord(head, List.of());
  }

  /**
   * The record with all that brings it to where a job now stands.
   *
   * @param access what can be seen now
   * @param undone whether it came there by undo, so that what stands again is not entered anew
   */
  public JobRecord following(Progress now, Seen access, Instant at, boolean undone) {
    List<Event> more = new Changes(at, undone).between(progress(), now);
    if (!access().equals(Optional.of(access))) {
      more.add(0, new Event.Access(at, access));
    }
    JobRecord next = this;
    for (Event event : more) {
      next = next.with(event);
    }
    return next;
  }

  /** With one more event; what was only being typed makes room for how it went on. */
  public JobRecord with(Event event) {
    List<Event> more = new ArrayList<>(events);
    if (!more.isEmpty() && Changes.goesOn(more.get(more.size() - 1), event)) {
      more.remove(more.size() - 1);
    }
    more.add(event);
    return new JobRecord(head, more);
  }

  /** Where the job stands after all that happened. */
  public Progress progress() {
    Progress progress = Progress.none();
    for (Event event : events) {
      progress = after(progress, event);
    }
    return progress;
  }

  private static Progress after(Progress p, Event event) {
    if (event instanceof Event.Entered e) {
      return p.entered(e.step(), e.answer());
    } else if (event instanceof Event.TakenBack e) {
      return e.standing().isPresent()
          ? p.entered(e.step(), e.standing().get())
          : p.cleared(e.step());
    } else if (event instanceof Event.Typed e) {
      return p.typed(e.step(), e.text());
    } else if (event instanceof Event.Noted e) {
      return p.noted(e.text());
    } else if (event instanceof Event.Stopped e) {
      return p.stopped(e.card());
    } else if (event instanceof Event.WentOn) {
      return p.wentOn();
    } else if (event instanceof Event.Finished e) {
      return p.finished(e.leftOpen());
    } else if (event instanceof Event.Reopened) {
      return p.reopened();
    }
    return p;
  }

  /** What could be seen last. */
  public Optional<Seen> access() {
    return events.stream()
        .filter(Event.Access.class::isInstance)
        .map(event -> ((Event.Access) event).access())
        .reduce((before, after) -> after);
  }

  /** The model that the job was done with last. */
  public ModelText model() {
    return events.stream()
        .filter(Event.Remodelled.class::isInstance)
        .map(event -> ((Event.Remodelled) event).model())
        .reduce((before, after) -> after)
        .orElse(head.model());
  }

  /** When the job was finished for the first time. */
  public Optional<Instant> finishedAt() {
    return events.stream().filter(Event.Finished.class::isInstance).map(Event::at).findFirst();
  }

  /** All that happened after the job was finished for the first time. */
  public List<Event> afterFinishing() {
    for (int i = 0; i < events.size(); i++) {
      if (events.get(i) instanceof Event.Finished) {
        return events.subList(i + 1, events.size());
      }
    }
    return List.of();
  }
}
