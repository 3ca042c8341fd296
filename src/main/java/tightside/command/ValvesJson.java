package tightside.command;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import tightside.engine.Clearance;
import tightside.engine.Nearest;
import tightside.engine.PhaserTravel;
import tightside.engine.Squeeze;
import tightside.engine.ToothTable;
import tightside.files.Model;

/** What is said of an engine's valves as the command line's JSON has it. */
final class ValvesJson {

  private ValvesJson() {}

  static Map<String, Object> of(Model model, ValvesAnswer answer) {
    Squeeze squeeze = answer.timed().squeeze();
    OptionalDouble bar = squeeze.crankingGaugeBar(Squeeze.USUAL_EXPONENT);
    return Json.object(
        "model", model.drive().name(),
        "valves", answer.valves().stream().map(ValvesJson::valve).toList(),
        "compression",
            Json.object(
                "nominal", squeeze.nominal(),
                "closed", orNull(squeeze.closed()),
                "crankingGaugeBarEstimate", orNull(bar)),
        "atReference",
            Json.object(
                "crankDegrees", answer.timed().engine().atReferenceDegrees().orElse(0),
                "assumed", answer.timed().engine().atReferenceDegrees().isEmpty()),
        "overlap", orNull(answer.timed().overlapDegrees()),
        "teeth", answer.teeth().stream().map(ValvesJson::teeth).toList(),
        "phasers", answer.phasers().stream().map(ValvesJson::phaser).toList());
  }

  private static Map<String, Object> valve(Clearance clearance) {
    Map<String, Object> valve =
        Json.object(
            "shaft", clearance.valve().shaft(),
            "opens", clearance.opensDegrees(),
            "closes", clearance.closesDegrees());
    return with(valve, clearance.least());
  }

  private static Map<String, Object> teeth(ToothTable table) {
    return Json.object(
        "shaft", table.shaft(),
        "crankDegreesPerTooth", table.degreesPerTooth(),
        "lays", table.rows().stream().map(ValvesJson::row).toList());
  }

  private static Map<String, Object> row(ToothTable.Row row) {
    Map<String, Object> lay = with(Json.object("teeth", row.teeth()), row.nearest());
    lay.put("closed", orNull(row.closed()));
    lay.put("overlap", orNull(row.overlapDegrees()));
    return lay;
  }

  private static Map<String, Object> phaser(PhaserTravel travel) {
    Map<String, Object> phaser =
        Json.object("shaft", travel.shaft(), "crankDegrees", travel.advancedDegrees());
    return with(phaser, travel.nearest());
  }

  private static Map<String, Object> with(Map<String, Object> before, Nearest nearest) {
    Map<String, Object> object = new LinkedHashMap<>(before);
    object.put("clearance", nearest.clearanceMm());
    object.put("clearanceAt", nearest.atDegrees());
    object.put("contact", nearest.contact());
    return object;
  }

  private static Double orNull(OptionalDouble number) {
    return number.isPresent() ? Double.valueOf(number.getAsDouble()) : null;
  }
}
