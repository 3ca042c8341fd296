package tightside.print;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tightside.drive.Seen;
import tightside.record.Answer;
import tightside.record.Event;
import tightside.record.JobRecord;
import tightside.record.Verdict;

/** The rows of a printed record, day by day. */
final class RecordRows {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private RecordRows() {}

  static List<Map<String, Object>> of(JobRecord record, ZoneId zone) {
    List<Map<String, Object>> days = new ArrayList<>();
    int afterwards = record.events().size() - record.afterFinishing().size();
    List<Map<String, Object>> rows = new ArrayList<>();
    String day = "";
    for (int i = 0; i < record.events().size(); i++) {
      Event event = record.events().get(i);
      String then = DAY.format(event.at().atZone(zone));
      boolean late = i == afterwards;
      if (!then.equals(day) || late) {
        day = then;
        rows = new ArrayList<>();
        days.add(
            Map.of("day", late ? day + ": changed after the job was finished" : day, "rows", rows));
      }
      Map<String, Object> row = row(event);
      row.put("time", TIME.format(event.at().atZone(zone)));
      rows.add(row);
    }
    return days;
  }

  private static Map<String, Object> row(Event event) {
    if (event instanceof Event.Entered e) {
      return answer(e.answer(), false, "");
    } else if (event instanceof Event.TakenBack e) {
      String standing =
          e.standing()
              .map(a -> "Taken back; again stands: \u201c%s\u201d.".formatted(a.givenOrDone()))
              .orElse("Taken back; nothing stands here now.");
      return answer(e.answer(), true, standing);
    } else if (event instanceof Event.Typed e) {
      return said(
          e.text().isEmpty()
              ? "What was typed and not entered was deleted."
              : "Typed, not entered: \u201c%s\u201d.".formatted(e.text()),
          false);
    } else if (event instanceof Event.Noted e) {
      return said(e.text().isBlank() ? "Note deleted." : "Note: " + e.text(), false);
    } else if (event instanceof Event.Access e) {
      return said("What could be seen from here on: %s.".formatted(access(e.access())), false);
    } else if (event instanceof Event.Stopped e) {
      return said("STOPPED: %s.".formatted(stop(e.card())), true);
    } else if (event instanceof Event.WentOn e) {
      return said("Went on after: %s.".formatted(stop(e.card())), true);
    } else if (event instanceof Event.Finished e) {
      int open = e.leftOpen().size();
      String how = open == 0 ? "every step done" : open + (open == 1 ? " step" : " steps");
      return said("FINISHED, %s%s.".formatted(how, open == 0 ? "" : " not done"), true);
    } else if (event instanceof Event.Remodelled e) {
      return said(
          "The drive was drawn otherwise; from here on model %s.".formatted(e.model().name()),
          true);
    } else if (event instanceof Event.Reopened) {
      return said("TAKEN UP AGAIN after it was finished.", true);
    }
    return said("Found damaged: %s.".formatted(((Event.Damage) event).sentence()), true);
  }

  private static Map<String, Object> said(String words, boolean heavy) {
    Map<String, Object> row = new HashMap<>();
    row.put("entry", false);
    row.put("words", words);
    row.put("heavy", heavy);
    return row;
  }

  private static Map<String, Object> answer(Answer answer, boolean back, String standing) {
    Map<String, Object> row = new HashMap<>();
    row.put("entry", true);
    row.put("asked", answer.asked());
    row.put("given", answer.givenOrDone());
    row.put("back", back);
    row.put("standing", standing);
    row.put("verdict", back ? "" : verdict(answer.verdict()));
    row.put("says", back || answer.verdict() == Verdict.NOTED ? "" : answer.says());
    return row;
  }

  private static String verdict(Verdict verdict) {
    return switch (verdict) {
      case RIGHT -> "right";
      case WRONG -> "WRONG";
      case OPEN -> "open";
      case NOTED -> "noted";
    };
  }

  private static String access(Seen seen) {
    return switch (seen) {
      case COVER_ON -> "cover on";
      case BORESCOPE -> "cover off, with a borescope";
      default -> "cover off";
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
