package tightside.picture;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.ChainFit;
import tightside.drive.Part;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;

/** What must be said of a whole chain, or of the whole drive: line by line under it. */
final class Notes {

  private final Draft draft;
  private final double em;
  private final double left;
  private double base;

  private Notes(Draft draft, double em) {
    this.draft = draft;
    this.em = em;
    left = draft.bounds().left();
    base = draft.bounds().bottom() - 1.6 * em;
  }

  /** That nothing in the picture may be measured. */
  static void schematic(Draft draft, double em) {
    new Notes(draft, em)
        .line(
            Ink.WARNING,
            Optional.of(Schematic.NOT_TO_SCALE + ". Counted only: no geometry."),
            Part.whole());
  }

  static void write(Draft draft, Solution solution, Optional<String> caution, double em) {
    Notes notes = new Notes(draft, em);
    notes.line(Ink.WARNING, caution, Part.whole());
    for (ChainSolution chain : solution.chains()) {
      boolean grave = !(chain.fit() instanceof ChainFit.Solved) || !chain.marksOff().isEmpty();
      notes.line(
          grave ? Ink.WARNING : Ink.LABEL,
          PictureWords.trouble(chain),
          Part.chain(chain.chain().name()));
    }
    Part crankshaft = Part.shaft(solution.drive().crankshaft().name());
    notes.line(Ink.LABEL, PictureWords.turned(solution.state()), crankshaft);
  }

  private void line(Ink ink, Optional<String> words, Part part) {
    if (words.isPresent()) {
      Tag tag = new Tag(ink, part, Plane.FRONT);
      draft.text(tag, Vector2D.of(left, base), words.get(), em, Shape.Align.LEFT);
      base -= LabelPlacer.LEADING * em;
    }
  }
}
