package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Face;
import tightside.drive.Guide;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;

/** The names of guides and tensioners, and where a plunger stands. */
final class PartLabels {

  private PartLabels() {}

  static List<Label> of(ChainView view, double em) {
    List<Label> labels = new ArrayList<>();
    for (int place = 0; place < view.chain().route().size(); place++) {
      if (view.chain().route().get(place) instanceof Face face) {
        labels.add(
            new Label(
                view.words(Ink.LABEL, place),
                view.words(Ink.LABEL, place),
                lines(view, face),
                spots(view, place, face, em)));
      }
    }
    return labels;
  }

  private static List<String> lines(ChainView view, Face face) {
    return face instanceof Tensioner
        ? view.solved().tensioner().map(PictureWords::tensioner).orElse(List.of(face.name()))
        : List.of(face.name());
  }

  private static List<Label.Spot> spots(ChainView view, int place, Face face, double em) {
    Band band =
        new Band(
            face instanceof Tensioner t ? t.curveAt(view.extensionMm()) : face.curve(),
            view.sense(place),
            FaceDrawing.depthMm(view));
    List<Label.Spot> spots = new ArrayList<>();
    double[] gaps = {1.4 * em, 3 * em, 5 * em, 8 * em};
    if (face instanceof Tensioner tensioner) {
      Vector2D middle = PlungerDrawing.bodyOf(view, place, tensioner);
      double out = view.plateMm() * 1.1;
      Bearing push = tensioner.plunger().bearing();
      for (double gap : gaps) {
        for (double side : new double[] {90, -90, 180, 135, -135}) {
          double start =
              Math.abs(side) > 90
                  ? PlungerDrawing.bodyMm(view, tensioner.plunger()) / 2 + 0.3 * em
                  : out;
          spots.add(new Label.Spot(middle, push.plus(side).direction(), start, start + gap * 0.6));
        }
      }
    }
    double start = FaceDrawing.depthMm(view) * (face instanceof Guide ? 1.4 : 1);
    for (double gap : gaps) {
      for (double along : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
        Vector2D away = band.inward(along);
        spots.add(new Label.Spot(band.at(along, 0), away, start, start + gap));
      }
    }
    return spots;
  }
}
