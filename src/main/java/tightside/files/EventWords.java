package tightside.files;

import static tightside.files.JsonLine.object;

import java.util.Locale;
import java.util.Map;
import tightside.record.Answer;
import tightside.record.Event;
import tightside.record.Head;
import tightside.record.ModelText;

/** The lines of a job record as names and values. */
final class EventWords {

  static final String VERSION = "tightside-job";

  /** Format of the records that are written and read. */
  static final int FORMAT = 1;

  static final String LINES = "lines";

  private EventWords() {}

  static Map<String, Object> of(Head head) {
    return object(
        VERSION,
        FORMAT,
        "begun",
        head.begun().toString(),
        "by",
        head.by(),
        "model",
        model(head.model()));
  }

  private static Map<String, Object> model(ModelText model) {
    return object(
        "name",
        model.name(),
        "place",
        model.place(),
        "sha256",
        model.sha256(),
        "text",
        model.text());
  }

  static Map<String, Object> of(Event event) {
    Map<String, Object> line = object("at", event.at().toString(), "did", did(event));
    if (event instanceof Event.Entered e) {
      line.put("step", e.step());
      line.put("answer", answer(e.answer()));
    } else if (event instanceof Event.TakenBack e) {
      line.put("step", e.step());
      line.put("answer", answer(e.answer()));
      e.standing().ifPresent(standing -> line.put("standing", answer(standing)));
    } else if (event instanceof Event.Typed e) {
      line.put("step", e.step());
      line.put("text", e.text());
    } else if (event instanceof Event.Noted e) {
      line.put("text", e.text());
    } else if (event instanceof Event.Access e) {
      line.put("access", word(e.access()));
    } else if (event instanceof Event.Stopped e) {
      line.put("card", e.card());
    } else if (event instanceof Event.WentOn e) {
      line.put("card", e.card());
    } else if (event instanceof Event.Finished e) {
      line.put("open", e.leftOpen());
    } else if (event instanceof Event.Remodelled e) {
      line.put("model", model(e.model()));
    } else if (event instanceof Event.Damage e) {
      line.put("found", e.sentence());
    }
    return line;
  }

  private static String did(Event event) {
    return switch (event.getClass().getSimpleName()) {
      case "Entered" -> "entered";
      case "TakenBack" -> "taken-back";
      case "Typed" -> "typed";
      case "Noted" -> "noted";
      case "Access" -> "access";
      case "Stopped" -> "stopped";
      case "WentOn" -> "went-on";
      case "Finished" -> "finished";
      case "Remodelled" -> "remodelled";
      case "Reopened" -> "reopened";
      default -> "damage";
    };
  }

  private static Map<String, Object> answer(Answer answer) {
    return object(
        "asked",
        answer.asked(),
        "given",
        answer.given(),
        "verdict",
        word(answer.verdict()),
        "says",
        answer.says());
  }

  /** A choice as it is written: cover-on. */
  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
