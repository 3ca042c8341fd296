package tightside.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tightside.readings.SagByThumb;
import tightside.timing.LooseStrand;
import tightside.words.Numbers;

/** How far a tight run may give under a thumb. */
final class SagField {

  /** No run gives more, mm. */
  private static final double MOST_MM = 1_000;

  private SagField() {}

  static Field of(LooseStrand loose, double pitchMm) {
    OptionalDouble right = loose.sagMm(Math.max(0, loose.slackMm()));
    OptionalDouble wrong = loose.sagMm(Math.max(0, loose.slackMm()) + pitchMm);
    double most = right.orElse(0) + SagByThumb.FELT_MM;
    List<Band> bands = new ArrayList<>();
    bands.add(new Band(0, most, Judgement.right("As with every link in its place.")));
    double loop = wrong.orElse(MOST_MM);
    if (wrong.isPresent() && loop > most) {
      bands.add(
          new Band(
              Math.nextUp(most),
              Math.nextDown(loop),
              Judgement.open(
                  "More than the right lay gives, less than a link too many (%s): look whether the shafts are in their tools, and count."
                      .formatted(Numbers.mm(loop)))));
    }
    double from = wrong.isPresent() ? Math.max(loop, Math.nextUp(most)) : Math.nextUp(most);
    bands.add(
        new Band(
            from,
            MOST_MM,
            Judgement.wrong(
                "As much as a link too many in this run gives: do not turn the engine; hold the tensioner back again and count.")));
    return new Field.Reading(
        Field.Unit.MM,
        "right: up to %s mm; a link too many: %s"
            .formatted(
                Numbers.fixed(most, 0),
                wrong.isPresent() ? Numbers.fixed(loop, 0) + " mm" : "a loop"),
        bands,
        "A sag is entered in mm, from 0.");
  }
}
