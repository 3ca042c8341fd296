package tightside.session;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import tightside.drive.Seen;
import tightside.record.Answer;
import tightside.record.Event;
import tightside.record.JobRecord;
import tightside.record.Verdict;

/**
 * What happened in a job, one line for each event.
 *
 * @param zone in which moments are told
 */
public record EventLines(ZoneId zone) {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm:ss", Locale.ENGLISH);

  /** "14:03:22". */
  public String time(java.time.Instant at) {
    return TIME.format(at.atZone(zone));
  }

  /** "2 Mar 2026, 14:03:22". */
  public String day(java.time.Instant at) {
    return DAY.format(at.atZone(zone));
  }

  /** "cover off". */
  public static String access(Seen cover) {
    return Words.seen(cover);
  }

  /** All that happened, in order. */
  public List<String> all(JobRecord record) {
    return record.events().stream().map(this::line).toList();
  }

  /** What was changed after the job was finished for the first time. */
  public List<String> afterFinishing(JobRecord record) {
    return record.afterFinishing().stream().map(this::line).toList();
  }

  private String line(Event event) {
    return day(event.at()) + ": " + words(event);
  }

  private static String words(Event event) {
    if (event instanceof Event.Entered e) {
      return answer(e.answer());
    } else if (event instanceof Event.TakenBack e) {
      return "taken back: "
          + answer(e.answer())
          + e.standing().map(s -> " Again stands: " + answer(s)).orElse("");
    } else if (event instanceof Event.Typed e) {
      return e.text().isEmpty()
          ? "what was typed and not entered was deleted."
          : "typed, not entered: \u201c%s\u201d.".formatted(e.text());
    } else if (event instanceof Event.Noted e) {
      return e.text().isBlank() ? "note deleted." : "note: %s".formatted(e.text());
    } else if (event instanceof Event.Access e) {
      return "access: %s.".formatted(Words.seen(e.access()));
    } else if (event instanceof Event.Stopped e) {
      return "STOPPED: %s.".formatted(stop(e.card()));
    } else if (event instanceof Event.WentOn e) {
      return "went on after: %s.".formatted(stop(e.card()));
    } else if (event instanceof Event.Finished e) {
      return finished(e);
    } else if (event instanceof Event.Remodelled e) {
      return "the drive was drawn otherwise; from here on model %s.".formatted(e.model().name());
    } else if (event instanceof Event.Reopened) {
      return "taken up again after it was finished.";
    }
    return "found damaged: %s.".formatted(((Event.Damage) event).sentence());
  }

  private static String finished(Event.Finished e) {
    return e.leftOpen().isEmpty()
        ? "finished, every step done."
        : "finished with %s not done."
            .formatted(Words.number(e.leftOpen().size(), "step", "steps"));
  }

  private static String answer(Answer answer) {
    String says = answer.verdict() == Verdict.NOTED ? "" : " " + answer.says();
    return "%s \u201c%s\u201d%s%s"
        .formatted(answer.asked(), answer.givenOrDone(), mark(answer.verdict()), says);
  }

  private static String mark(Verdict verdict) {
    return switch (verdict) {
      case RIGHT -> " right.";
      case WRONG -> " WRONG.";
      case OPEN -> " open.";
      case NOTED -> ".";
    };
  }

  private static String stop(String card) {
    return switch (card.substring(card.indexOf('/') + 1)) {
      case "hold-back" -> "the hold-back slipped";
      case "dropped" -> "the chain dropped";
      case "resistance" -> "resistance while turning";
      default -> card;
    };
  }
}
