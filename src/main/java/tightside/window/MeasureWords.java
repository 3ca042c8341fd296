package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import javafx.scene.Node;
import tightside.session.Proof;
import tightside.session.Snapshot;
import tightside.survey.Adjustment;
import tightside.survey.SureCount;
import tightside.words.SurveyWords;

/** What the card Measure says of a drive, the most urgent first. */
final class MeasureWords {

  private MeasureWords() {}

  static List<Node> of(Snapshot now) {
    if (now.drive().countedOnly()) {
      return note(
          "This drive is counted only. Give its shafts places, if only roughly, before what you"
              + " measure on it can be adjusted.");
    }
    if (now.unadjusted().isPresent()) {
      return List.of(
          Controls.caution(
              "The drive was drawn otherwise since it was measured, and is not adjusted. What was"
                  + " measured on the parts that it still has is kept, and saved with it."));
    }
    return now.measured()
        .map(a -> said(now, a))
        .orElseGet(
            () ->
                note(
                    "Nothing was measured on this drive. With the first measurement all that is"
                        + " drawn becomes a sketch, and the drive is adjusted to what you measured;"
                        + " undo brings it back."));
  }

  private static List<Node> note(String sentence) {
    return Controls.sentences(List.of(sentence), "note");
  }

  private static List<Node> said(Snapshot now, Adjustment a) {
    List<Node> said = new ArrayList<>();
    if (Proof.isOpen(now)) {
      said.add(
          Controls.caution(
              "measured, not proved. Count the links on the engine and type them on the card Count"
                  + " (Ctrl+1) before you rely on this drive."));
    } else {
      said.add(Controls.label("Proved: counts on the engine agree with it.", "verdict"));
    }
    if (a.suspect().isPresent()) {
      said.add(Controls.caution(SurveyWords.suspect(a)));
    }
    for (SureCount count : a.counts()) {
      String more = SurveyWords.more(count) + typed(now, count);
      said.add(Controls.label(SurveyWords.briefly(count), "strong"));
      said.add(
          count.contradicted() || clashes(now, count)
              ? Controls.caution(more)
              : Controls.label(more, "note"));
    }
    SurveyWords.next(a).ifPresent(s -> said.add(Controls.label(s, "verdict")));
    said.add(Controls.label(SurveyWords.global(a.global()), "note"));
    if (a.suspect().isEmpty()) {
      said.add(Controls.label(SurveyWords.suspect(a), "note"));
    }
    SurveyWords.unchecked(a).ifPresent(s -> said.add(Controls.label(s, "note")));
    return said;
  }

  private static boolean clashes(Snapshot now, SureCount count) {
    return Proof.typed(now, count).isPresent() && !Proof.agrees(now, count);
  }

  private static String typed(Snapshot now, SureCount count) {
    OptionalLong typed = Proof.typed(now, count);
    if (typed.isEmpty()) {
      return "";
    }
    return Proof.agrees(now, count)
        ? " Typed on the card Count: the same."
        : " Typed on the card Count: %d. Count again, then measure.".formatted(typed.getAsLong());
  }
}
