package tightside.files;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.drive.Seen;
import tightside.record.Answer;
import tightside.record.Event;
import tightside.record.Head;
import tightside.record.ModelText;
import tightside.record.Verdict;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The lines of a job record read back. */
record EventReader(JsonNode line) {

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  /** A line that can't be understood. */
  static final class NotUnderstood extends Exception {

    NotUnderstood() {
      super("not understood", null, false, false);
    }
  }

  static EventReader of(String json) throws NotUnderstood {
    try {
      JsonNode line = JSON.readTree(json);
      if (line != null && line.isObject()) {
        return new EventReader(line);
      }
      throw new NotUnderstood();
    } catch (JacksonException e) {
      throw new NotUnderstood();
    }
  }

  /** The version of a record's first line; nothing where it is none. */
  Optional<JsonNode> version() {
    return Optional.ofNullable(line.get(EventWords.VERSION)).filter(JsonNode::isIntegralNumber);
  }

  /** How many lines a record says it has; nothing where the line is not its last. */
  Optional<Integer> lines() {
    return Optional.ofNullable(line.get(EventWords.LINES))
        .filter(JsonNode::isInt)
        .map(JsonNode::intValue);
  }

  Head head() throws NotUnderstood {
    return new Head(moment("begun"), text("by"), model());
  }

  private ModelText model() throws NotUnderstood {
    EventReader model = new EventReader(section("model"));
    return new ModelText(
        model.text("name"), model.text("place"), model.text("text"), model.text("sha256"));
  }

  Event event() throws NotUnderstood {
    Instant at = moment("at");
    return switch (text("did")) {
      case "entered" -> new Event.Entered(at, text("step"), answer("answer"));
      case "taken-back" ->
          new Event.TakenBack(
              at,
              text("step"),
              answer("answer"),
              line.has("standing") ? Optional.of(answer("standing")) : Optional.empty());
      case "typed" -> new Event.Typed(at, text("step"), text("text"));
      case "noted" -> new Event.Noted(at, text("text"));
      case "access" -> new Event.Access(at, choice(Seen.class, "access"));
      case "stopped" -> new Event.Stopped(at, text("card"));
      case "went-on" -> new Event.WentOn(at, text("card"));
      case "finished" -> new Event.Finished(at, texts("open"));
      case "remodelled" -> new Event.Remodelled(at, model());
      case "reopened" -> new Event.Reopened(at);
      case "damage" -> new Event.Damage(at, text("found"));
      default -> throw new NotUnderstood();
    };
  }

  private Answer answer(String key) throws NotUnderstood {
    EventReader answer = new EventReader(section(key));
    return new Answer(
        answer.text("asked"),
        answer.text("given"),
        answer.choice(Verdict.class, "verdict"),
        answer.text("says"));
  }

  private JsonNode section(String key) throws NotUnderstood {
    JsonNode section = line.get(key);
    if (section == null || !section.isObject()) {
      throw new NotUnderstood();
    }
    return section;
  }

  private String text(String key) throws NotUnderstood {
    return text(line.get(key));
  }

  private static String text(JsonNode node) throws NotUnderstood {
    if (node == null || !node.isString()) {
      throw new NotUnderstood();
    }
    return node.stringValue();
  }

  private List<String> texts(String key) throws NotUnderstood {
    JsonNode list = line.get(key);
    if (list == null || !list.isArray()) {
      throw new NotUnderstood();
    }
    List<String> texts = new ArrayList<>();
    for (JsonNode item : list) {
      texts.add(text(item));
    }
    return texts;
  }

  private Instant moment(String key) throws NotUnderstood {
    try {
      return Instant.parse(text(key));
    } catch (DateTimeParseException e) {
      throw new NotUnderstood();
    }
  }

  private <E extends Enum<E>> E choice(Class<E> choices, String key) throws NotUnderstood {
    String word = text(key);
    for (E choice : choices.getEnumConstants()) {
      if (EventWords.word(choice).equals(word)) {
        return choice;
      }
    }
    throw new NotUnderstood();
  }
}
