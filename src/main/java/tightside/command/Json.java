package tightside.command;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;

/** Answers for programs: maps, lists, text, numbers, truth and null, written as JSON. */
final class Json {

  /** Decimals kept: far below anything that can be measured, and free of rounding noise. */
  private static final int DECIMALS = 12;

  private Json() {}

  /** An object from alternating names and values, in that order. */
  static Map<String, Object> object(Object... namesAndValues) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      object.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return object;
  }

  /** One line of JSON. */
  static String line(Object value) {
    StringWriter text = new StringWriter();
    JsonFactory factory =
        JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(JsonWriteFeature.ESCAPE_FORWARD_SLASHES)
            .build();
    try (JsonGenerator json = factory.createGenerator(ObjectWriteContext.empty(), text)) {
      write(json, value);
    }
    return text.toString();
  }

  private static void write(JsonGenerator json, Object value) {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof Map<?, ?> object) {
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
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Double number) {
      json.writeNumber(plain(number));
    } else if (value instanceof BigInteger number) {
      json.writeNumber(number);
    } else if (value instanceof Number number) {
      json.writeNumber(number.longValue());
    } else {
      json.writeString(value.toString());
    }
  }

  private static BigDecimal plain(double number) {
    BigDecimal rounded =
        BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
