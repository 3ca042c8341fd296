package tightside.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.Gearing;
import tightside.drive.Shaft;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;
import tightside.timing.State;

/**
 * The picture of a drive in a state: every link, every tooth, marks and paint where they stand.
 *
 * <p>Where no chain could be laid, its sprockets and faces are drawn and the picture says why.
 */
public final class DrivePicture {

  private final Solution solution;
  private final boolean schematic;
  private final PictureOptions options;
  private final Gearing gearing;
  private final Draft draft = new Draft();
  private final List<ChainView> views;
  private final Map<String, List<Shape>> faces = new HashMap<>();

  private DrivePicture(Solution solution, PictureOptions options) {
    this.solution = Schematic.over(solution);
    schematic = solution.drive().countedOnly();
    this.options = options;
    gearing = this.solution.drive().gearing();
    views = views();
  }

  public static Picture of(Solution solution, PictureOptions options) {
    return new DrivePicture(solution, options).picture();
  }

  /** The same without words, in the bounds and with the lines of another picture. */
  public static Picture within(Picture other, Solution solution, PictureOptions options) {
    DrivePicture drawing = new DrivePicture(solution, options.withoutWords());
    drawing.views.forEach(drawing::draw);
    return drawing.within(other.bounds(), other.lineMm());
  }

  private Picture within(Bounds bounds, double lineMm) {
    return new Picture(draft.shapes(), bounds, lineMm, solution.drive().name(), description());
  }

  /** A picture with what stays of it. */
  public static Standing standing(Solution solution, PictureOptions options) {
    DrivePicture drawing = new DrivePicture(solution, options);
    return new Standing(drawing.picture(), Map.copyOf(drawing.faces));
  }

  /**
   * A picture without words of a drive that moves.
   *
   * @param standing of a picture of the same drive in the same state, but for the crank's angle
   */
  public static Picture moved(Standing standing, Solution solution, PictureOptions options) {
    DrivePicture drawing = new DrivePicture(solution, options.withoutWords());
    drawing.views.forEach(
        view -> {
          standing.faces().get(view.chain().name()).forEach(drawing.draft::add);
          drawing.drawMoving(view);
        });
    return drawing.within(standing.picture().bounds(), standing.picture().lineMm());
  }

  /** Whole cycles of two turns of which a picture tells; 0 where it tells of none. */
  public static long wholeCycles(State state) {
    return PaintLabels.wholeCycles(state);
  }

  private Picture picture() {
    views.forEach(this::draw);
    Bounds drive = draft.bounds();
    double size = Math.max(drive.width(), drive.height());
    double em = options.textScale() * size / 66;
    if (options.labels()) {
      labels(em);
    }
    if (options.legend()) {
      Legend.draw(draft, 0.88 * em);
    }
    double finest = views.stream().mapToDouble(ChainView::pitchMm).min().orElseThrow() / 26;
    return new Picture(
        draft.shapes(),
        draft.bounds().grown(1.5 * em),
        Math.min(finest, size / 1300),
        solution.drive().name(),
        description());
  }

  private String description() {
    String seen = PictureWords.description(solution, options);
    return schematic ? Schematic.NOT_TO_SCALE + ", counted only: no geometry. " + seen : seen;
  }

  /** The chains of a drive from the back to the front. */
  static List<ChainView> backToFront(Solution solution, PictureOptions options) {
    return new DrivePicture(solution, options).views;
  }

  private List<ChainView> views() {
    List<ChainSolution> order = new ArrayList<>(solution.chains());
    order.sort(Comparator.comparingDouble(this::depth));
    List<ChainView> ordered = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      Chain chain = order.get(i).chain();
      boolean behind =
          order.subList(i + 1, order.size()).stream().anyMatch(o -> meet(chain, o.chain()));
      Plane plane = behind ? Plane.BACK : Plane.FRONT;
      ordered.add(
          schematic
              ? new ChainView(solution, gearing, order.get(i), plane, Optional.empty())
              : ChainView.of(solution, gearing, order.get(i), plane, options.painted()));
    }
    return ordered;
  }

  /**
   * How far in front a chain is drawn. Two chains on one shaft are both to be seen where the
   * smaller sprocket lies in front of the larger.
   */
  private double depth(ChainSolution solved) {
    Chain chain = solved.chain();
    if (options.front().filter(chain.name()::equals).isPresent()) {
      return Double.POSITIVE_INFINITY;
    }
    return -radius(chain, chain.driver().shaft());
  }

  /** Whether two chains have a shaft in common: then they lie in different planes. */
  private static boolean meet(Chain one, Chain other) {
    return one.sprockets().stream().anyMatch(s -> other.sprocketOn(s.shaft()).isPresent());
  }

  private static double radius(Chain chain, String shaft) {
    return chain.sprocketOn(shaft).orElseThrow().teeth() * chain.pitchMm();
  }

  private void draw(ChainView view) {
    int from = draft.shapes().size();
    FaceDrawing.draw(draft, view);
    List<Shape> drawn = draft.shapes().subList(from, draft.shapes().size());
    faces.put(view.chain().name(), List.copyOf(drawn));
    drawMoving(view);
  }

  private void drawMoving(ChainView view) {
    List<Integer> places = view.chain().sprocketPlaces();
    places.forEach(place -> SprocketDrawing.draw(draft, view, place));
    view.lay()
        .ifPresentOrElse(lay -> ChainDrawing.draw(draft, view, lay), () -> pathWithoutChain(view));
    places.forEach(place -> MarkDrawing.draw(draft, view, place));
    places.forEach(place -> TurningArrow.draw(draft, view, place));
    options.access().ifPresent(access -> Veil.draw(draft, view, access));
    if (options.labels()) {
      view.path().ifPresent(path -> keepClear(view, new PathWalk(path)));
    }
  }

  private void pathWithoutChain(ChainView view) {
    if (schematic) {
      SchematicLine.draw(draft, view);
      return;
    }
    view.path()
        .ifPresent(path -> draft.open(view.tag(Ink.NO_CHAIN), StrandLines.curves(path.legs())));
  }

  private void keepClear(ChainView view, PathWalk walk) {
    double step = Math.max(0.5, view.plateMm() / view.pitchMm());
    for (double at = 0; at < walk.pitches(); at += step) {
      draft.keepClear(walk.pointAt(at), 0.75 * view.plateMm());
    }
    view.lay()
        .flatMap(ChainLay::sag)
        .ifPresent(
            sag -> sag.line().forEach(piece -> draft.keepClear(piece.to(), 0.75 * view.plateMm())));
  }

  private void labels(double em) {
    LabelPlacer placer = new LabelPlacer(draft, em);
    ShaftLabels shafts = new ShaftLabels(draft, views, placer, em, true);
    List<ChainView> frontFirst = new ArrayList<>(views);
    Collections.reverse(frontFirst);
    for (ChainView view : frontFirst) {
      StrandLabels.of(view, options, em).forEach(placer::place);
    }
    for (Shaft shaft : solution.drive().shafts()) {
      shafts.write(shaft);
    }
    for (ChainView view : frontFirst) {
      PartLabels.of(view, em).forEach(placer::place);
    }
    // Of one chain, or the labels of a drive of several would crowd out one another.
    String painted = options.front().orElse(solution.chains().get(0).chain().name());
    views.stream()
        .filter(view -> view.chain().name().equals(painted))
        .flatMap(view -> PaintLabels.of(view, em).stream())
        .forEach(placer::place);
    if (schematic) {
      Notes.schematic(draft, em);
    }
    if (options.notes()) {
      Notes.write(draft, solution, options.caution(), em);
    }
  }
}
