package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tightside.drive.Limits;
import tightside.survey.Reading;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The schema and the reader agree: what the schema refuses, the reader refuses too. */
class SchemaTest {

  private static final String TEXT = Samples.text("/tightside/model-1.schema.json");
  private static final YAMLMapper YAML = new YAMLMapper();

  static Schema schema() {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(TEXT, InputFormat.JSON);
  }

  static List<Error> refusals(Schema schema, String yaml) {
    return schema.validate(YAML.readTree(yaml));
  }

  @Test
  void everySampleIsValid() {
    for (String sample :
        List.of(
            Samples.answered(),
            Samples.twoWheels(),
            Samples.text("/tightside/files/measured.yaml"))) {
      assertThat(refusals(schema(), sample)).isEmpty();
    }
  }

  @Test
  void everyMadeModelIsValid() {
    Schema schema = schema();
    for (long seed = 0; seed < 100; seed++) {
      String text = ModelWriter.write(new ModelMaker(seed).next());
      assertThat(refusals(schema, text)).as("seed %d%n%s", seed, text).isEmpty();
    }
  }

  @Test
  void misspeltKeysAndWrongTypesAreRefused() {
    for (String edit : List.of("pitch: eight", "pich: 8.0", "pitch: \"8.0\"", "pitch: 800")) {
      String text = Samples.answered().replace("pitch: 8.0", edit);
      assertThat(refusals(schema(), text)).as(edit).isNotEmpty();
    }
  }

  @Test
  void everyKeyHasATitleOrIsADefinitionThatHas() {
    JsonNode root = JsonMapper.shared().readTree(TEXT);
    assertThat(untitled(root, "")).isEmpty();
  }

  private static List<String> untitled(JsonNode node, String path) {
    List<String> found = new java.util.ArrayList<>();
    for (Map.Entry<String, JsonNode> child : node.properties()) {
      String at = path + "/" + child.getKey();
      if (path.endsWith("/properties") && !at.contains("/then/")) {
        JsonNode value = child.getValue();
        if (!value.has("$ref") && !value.has("description")) {
          found.add(at);
        }
      }
      found.addAll(untitled(child.getValue(), at));
    }
    return found;
  }

  @Test
  void limitsAreTheReadersOwn() {
    JsonNode defs = JsonMapper.shared().readTree(TEXT).get("$defs");
    Map<String, Limits> limits = new TreeMap<>();
    limits.put("/point/items", Limits.POSITION_MM);
    limits.put("/bearing", Limits.BEARING_DEGREES);
    limits.put("/phaser/properties/travel", Limits.PHASER_TRAVEL_DEGREES);
    limits.put("/chain/properties/pitch", Limits.PITCH_MM);
    limits.put("/chain/properties/links", Limits.LINKS);
    limits.put("/chain/properties/plate-height", Limits.PLATE_HEIGHT_MM);
    limits.put("/chain/properties/roller-diameter", Limits.ROLLER_DIAMETER_MM);
    limits.put("/sprocket/properties/teeth", Limits.TEETH);
    limits.put("/sprocket/properties/straight", Limits.STRAIGHT_MM);
    limits.put("/chain/properties/counts/items", Limits.COUNT);
    limits.put("/arm/properties/plunger/properties/travel", Limits.TRAVEL_MM);
    limits.put("/arm/properties/plunger/properties/step", Limits.STEP_MM);
    limits.put("/shoe/properties/plunger/properties/travel", Limits.TRAVEL_MM);
    limits.put("/shoe/properties/plunger/properties/step", Limits.STEP_MM);
    limits.put("/valve/properties/lift", Limits.LIFT_MM);
    limits.put("/valve/properties/duration", Limits.DURATION_DEGREES);
    limits.put("/valve/properties/centreline", Limits.CENTRELINE_DEGREES);
    limits.put("/valve/properties/tilt", Limits.TILT_DEGREES);
    limits.put("/valve/properties/gap", Limits.GAP_MM);
    limits.put("/valve/properties/spring/properties/preload", Limits.SPRING_PRELOAD_N);
    limits.put("/valve/properties/spring/properties/rate", Limits.SPRING_RATE_N_PER_MM);
    limits.put("/engine/properties/phases/items", Limits.CRANK_DEGREES);
    limits.put("/engine/properties/at-reference", Limits.CRANK_DEGREES);
    limits.put("/engine/properties/bore", Limits.BORE_MM);
    limits.put("/engine/properties/stroke", Limits.STROKE_MM);
    limits.put("/engine/properties/rod", Limits.ROD_MM);
    limits.put("/engine/properties/compression-ratio", Limits.COMPRESSION_RATIO);
    limits.put("/job/properties/locking-tool-play", Limits.LOCKING_PLAY_DEGREES);
    limits.put("/read-mm", Limits.POSITION_MM);
    limits.put("/diameter", SurveyDecoder.DIAMETER_MM);
    limits.put("/sigma", Reading.SIGMA);
    limits.put("/pitches/properties/pitches", SurveyDecoder.PITCHES);
    limits.put("/count/properties/links", SurveyDecoder.STRAND_LINKS);
    limits.put("/bolt/properties/adapter/properties/wrench", Limits.WRENCH_MM);
    limits.put("/bolt/properties/adapter/properties/reach", Limits.ADAPTER_MM);
    limits.put("/bolt/properties/adapter/properties/angle", Limits.ADAPTER_DEGREES);
    limits.put("/tightening/properties/torque", Limits.TORQUE);
    limits.put("/tightening/properties/loosen", Limits.BOLT_DEGREES);
    limits.put("/tightening/properties/angle", Limits.BOLT_DEGREES);
    limits.forEach(
        (path, limit) -> {
          JsonNode at = defs.at(path);
          assertThat(at.path("minimum").asDouble()).as(path).isEqualTo(limit.least());
          assertThat(at.path("maximum").asDouble()).as(path).isEqualTo(limit.most());
        });
    assertThat(TEXT.split("\"minimum\"", -1)).hasSize(limits.size() + 1);
  }
}
