package tightside.picture;

import java.util.List;
import tightside.drive.TautPath;
import tightside.timing.Strand;

/** The chain of a schematic: a line round its route, dashed on the slack side. */
final class SchematicLine {

  private SchematicLine() {}

  static void draw(Draft draft, ChainView view) {
    if (view.path().isEmpty()) {
      return;
    }
    List<TautPath.Leg> legs = view.path().get().legs();
    List<TautPath.Leg> slack =
        view.solved().strands().stream()
            .filter(strand -> !strand.taut())
            .flatMap(strand -> slack(view, strand).stream())
            .toList();
    for (TautPath.Leg leg : legs) {
      Ink ink = slack.contains(leg) ? Ink.SLACK : Ink.TIGHT;
      draft.open(view.tag(ink), StrandLines.curves(List.of(leg)));
    }
  }

  /** The run that the tensioner holds, without the wraps at its ends. */
  private static List<TautPath.Leg> slack(ChainView view, Strand strand) {
    return StrandLines.between(view.path().orElseThrow(), strand);
  }
}
