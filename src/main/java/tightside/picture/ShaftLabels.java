package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Part;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.timing.Lag;
import tightside.timing.ShaftTiming;
import tightside.timing.Solution;

/**
 * What each shaft is and how it stands: on its sprocket where there is room, beside it otherwise.
 */
final class ShaftLabels {

  private final Draft draft;
  private final List<ChainView> views;
  private final LabelPlacer placer;
  private final double em;
  private final boolean judged;

  /**
   * @param views in the order in which they are drawn
   * @param judged whether it is said how shafts stand
   */
  ShaftLabels(Draft draft, List<ChainView> views, LabelPlacer placer, double em, boolean judged) {
    this.draft = draft;
    this.views = views;
    this.placer = placer;
    this.em = em;
    this.judged = judged;
  }

  /** A sprocket, by its chain and its place there. */
  private record Seated(ChainView view, int place) {
    Sprocket sprocket() {
      return view.chain().sprocketAt(place);
    }

    double rootMm() {
      return view.profile(place).rootRadiusMm();
    }

    /** How far from the centre words may reach. */
    double roomMm() {
      double arrow = TurningArrow.RADIUS - 0.1;
      return view.showsTurning(place)
          ? arrow * SprocketDrawing.rimMm(view, place)
          : 0.97 * rootMm();
    }
  }

  void write(Shaft shaft) {
    List<Seated> seats = seats(shaft);
    if (seats.isEmpty()) {
      return;
    }
    Seated top = seats.get(seats.size() - 1);
    List<String> above = PictureWords.named(shaft);
    List<String> below = new ArrayList<>(timing(shaft, seats));
    below.add(PictureWords.teeth(seats.stream().map(Seated::sprocket).toList()));
    if (fits(above, top, 1) && fits(below, top, -1)) {
      column(shaft, above, top, 1);
      column(shaft, below, top, -1);
    } else {
      List<String> lines = new ArrayList<>(List.of(shaft.name(), about(shaft, seats)));
      lines.addAll(timing(shaft, seats));
      placer.place(label(shaft, lines, seats));
    }
  }

  private List<Seated> seats(Shaft shaft) {
    List<Seated> seats = new ArrayList<>();
    for (ChainView view : views) {
      for (int place : view.chain().sprocketPlaces()) {
        if (view.chain().sprocketAt(place).shaft().equals(shaft.name())) {
          seats.add(new Seated(view, place));
        }
      }
    }
    return seats;
  }

  private static String about(Shaft shaft, List<Seated> seats) {
    String teeth = PictureWords.teeth(seats.stream().map(Seated::sprocket).toList());
    List<String> named = PictureWords.named(shaft);
    return named.size() == 1 ? teeth : named.get(1) + ", " + teeth;
  }

  /** How the shaft stands, in teeth of the sprocket that drives it. */
  private List<String> timing(Shaft shaft, List<Seated> seats) {
    ChainView any = seats.get(0).view();
    Optional<ShaftTiming> timing = any.solution().shaft(shaft.name());
    Optional<String> driving = any.gearing().drivenBy(shaft.name());
    if (!judged || timing.isEmpty() || driving.isEmpty()) {
      return List.of();
    }
    int teeth =
        seats.stream()
            .filter(seat -> seat.view().chain().name().equals(driving.get()))
            .mapToInt(seat -> seat.sprocket().teeth())
            .findFirst()
            .orElseThrow();
    return PictureWords.timing(views.get(0).solution(), timing.get(), teeth);
  }

  private boolean late(Shaft shaft) {
    Solution solution = views.get(0).solution();
    return judged
        && PictureWords.unknownUntil(solution.state()).isEmpty()
        && solution.shaft(shaft.name()).filter(t -> t.lag() != Lag.RIGHT).isPresent();
  }

  private Tag tag(Ink ink, Shaft shaft) {
    return new Tag(ink, Part.shaft(shaft.name()), Plane.FRONT);
  }

  /** Whether lines stacked above (1) or below (-1) a hub stay on the sprocket. */
  private boolean fits(List<String> lines, Seated seat, int side) {
    for (int i = 0; i < lines.size(); i++) {
      double y = Math.abs(baseLine(lines, i, seat, side)) + (side > 0 ? 0.8 : 0.3) * em;
      double x = TextSize.widthMm(lines.get(i), em) / 2;
      if (Math.hypot(x, y) > seat.roomMm()) {
        return false;
      }
    }
    return true;
  }

  private double baseLine(List<String> lines, int i, Seated seat, int side) {
    double hub = SprocketDrawing.hubMm(seat.view(), seat.place()) + 0.45 * em;
    double line = LabelPlacer.LEADING * em;
    return side > 0 ? hub + (lines.size() - 1 - i) * line : -hub - 0.75 * em - i * line;
  }

  private void column(Shaft shaft, List<String> lines, Seated seat, int side) {
    for (int i = 0; i < lines.size(); i++) {
      Ink heavy = side > 0 ? Ink.COUNT : late(shaft) ? Ink.WARNING : Ink.LABEL;
      Vector2D at = shaft.at().add(Vector2D.of(0, baseLine(lines, i, seat, side)));
      draft.text(tag(i == 0 ? heavy : Ink.LABEL, shaft), at, lines.get(i), em, Shape.Align.MIDDLE);
    }
  }

  private Label label(Shaft shaft, List<String> lines, List<Seated> seats) {
    double clear =
        seats.stream().mapToDouble(s -> s.view().clearRadiusMm(s.place())).max().orElseThrow();
    double start = seats.get(seats.size() - 1).rootMm() * 0.5;
    List<Label.Spot> spots = new ArrayList<>();
    for (double gap : new double[] {0.8 * em, 2 * em, 4 * em, 7 * em}) {
      for (int bearing : new int[] {90, 270, 135, 225, 180, 45, 315, 0, 110, 250, 70, 290}) {
        Vector2D away = new Bearing(bearing).direction();
        spots.add(new Label.Spot(shaft.at(), away, start, clear + gap));
      }
    }
    return new Label(
        tag(late(shaft) ? Ink.WARNING : Ink.COUNT, shaft), tag(Ink.LABEL, shaft), lines, spots);
  }
}
