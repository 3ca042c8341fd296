package tightside.picture;

import java.util.List;
import java.util.Optional;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.timing.Solution;

/**
 * What a person sees of a drive with the access at hand, and nothing that judges it: no error, no
 * fixed mark, no count, no timing. What can't be seen is drawn as it would be if all were right, so
 * that nothing can be told from it, and the chain that can't be seen is left out.
 *
 * <p>Links are painted under the marks as the sprockets sit.
 */
public final class SeenPicture {

  /** The name of the drive may say what is to be found. */
  private static final String TITLE = "The drive of a lesson";

  private final Seen access;
  private final Draft draft = new Draft();

  private SeenPicture(Seen access) {
    this.access = access;
  }

  /**
   * @param truth the drive as it is
   * @param right the same drive with nothing wrong, at the same crank angle
   * @param access how far a person can look, with all before it
   * @param textScale of the names, as in {@link PictureOptions}
   * @param description what can be seen, in words
   */
  public static Picture of(
      Solution truth, Solution right, Seen access, double textScale, String description) {
    return new SeenPicture(access).picture(truth, right, textScale, description);
  }

  private Picture picture(Solution truth, Solution right, double textScale, String description) {
    PictureOptions options = PictureOptions.labelled(Optional.empty(), textScale);
    List<ChainView> asItIs =
        DrivePicture.backToFront(truth, options.paintedWith(truth.state().reseats()));
    List<ChainView> ifRight = DrivePicture.backToFront(right, options);
    for (int i = 0; i < asItIs.size(); i++) {
      draw(asItIs.get(i), ifRight.get(i));
    }
    Bounds drive = draft.bounds();
    double size = Math.max(drive.width(), drive.height());
    double em = textScale * size / 66;
    names(ifRight, em);
    double finest = ifRight.stream().mapToDouble(ChainView::pitchMm).min().orElseThrow() / 26;
    return new Picture(
        draft.shapes(),
        draft.bounds().grown(1.5 * em),
        Math.min(finest, size / 1300),
        TITLE,
        description);
  }

  private void draw(ChainView asItIs, ChainView ifRight) {
    SightLine sight = new SightLine(asItIs, access);
    FaceDrawing.draw(draft, sight.tensioner() ? asItIs : ifRight);
    List<Integer> places = asItIs.chain().sprocketPlaces();
    for (int place : places) {
      SprocketDrawing.draw(draft, sight.mark(place) ? asItIs : ifRight, place);
    }
    asItIs.lay().ifPresent(lay -> chain(asItIs, lay, sight));
    for (int place : places) {
      if (sight.mark(place)) {
        MarkDrawing.markAlone(draft, asItIs, place);
      }
      TurningArrow.draw(draft, ifRight, place);
    }
  }

  private void chain(ChainView view, ChainLay lay, SightLine sight) {
    Draft whole = new Draft();
    ChainDrawing.draw(whole, view, lay);
    for (Shape shape : whole.shapes()) {
      boolean line = shape.tag().ink() == Ink.TIGHT || shape.tag().ink() == Ink.SLACK;
      if (!line && sight.at(shape.bounds().centre())) {
        draft.add(shape);
      }
    }
  }

  private void names(List<ChainView> views, double em) {
    LabelPlacer placer = new LabelPlacer(draft, em);
    ShaftLabels shafts = new ShaftLabels(draft, views, placer, em, false);
    for (Shaft shaft : views.get(0).solution().drive().shafts()) {
      shafts.write(shaft);
    }
  }
}
