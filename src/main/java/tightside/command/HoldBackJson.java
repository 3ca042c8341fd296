package tightside.command;

import java.util.Map;
import tightside.timing.HoldBack;
import tightside.timing.LooseStrand;
import tightside.timing.WrongLay;

/** A held-back chain as the command line's JSON has it. */
final class HoldBackJson {

  private HoldBackJson() {}

  static Map<String, Object> chain(HoldBack hold) {
    return Json.object(
        "chain", hold.chain().name(),
        "extension", hold.extensionMm(),
        "slack", hold.slackMm(),
        "strands", hold.strands().stream().map(HoldBackJson::strand).toList(),
        "reseats", hold.reseats().stream().map(HoldBackJson::reseat).toList());
  }

  private static Map<String, Object> strand(LooseStrand loose) {
    return Json.object(
        "from", loose.strand().from(),
        "to", loose.strand().to(),
        "slack", loose.slackMm());
  }

  private static Map<String, Object> reseat(WrongLay lay) {
    Map.Entry<String, Integer> only = lay.lay().teeth().entrySet().iterator().next();
    Double turn = lay.possible() ? Double.valueOf(0) : lay.turnNeededDegrees().get(only.getKey());
    return Json.object(
        "shaft", only.getKey(),
        "teeth", only.getValue(),
        "possible", lay.possible(),
        "missing", lay.missingMm(),
        "turnNeeded", turn);
  }
}
