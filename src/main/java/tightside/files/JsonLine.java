package tightside.files;

import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** One JSON object on one line: texts, whole numbers, lists of texts, objects. */
final class JsonLine {

  private JsonLine() {}

  /** An object from alternating names and values, in that order. */
  static Map<String, Object> object(Object... namesAndValues) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      object.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return object;
  }

  static String of(Map<String, Object> object) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
      write(json, object);
    }
    return text.toString();
  }

  private static void write(JsonGenerator json, Object value) {
    if (value instanceof Map<?, ?> object) {
      json.writeStartObject();
      object.forEach(
          (name, member) -> {
            json.writeName((String) name);
            write(json, member);
          });
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      list.forEach(member -> write(json, member));
      json.writeEndArray();
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else {
      json.writeString((String) value);
    }
  }
}
