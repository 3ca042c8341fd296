package tightside.picture;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.ChainKind;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.geometry.Pose;

/** The links of one chain: rollers, plates, the lines of tight and slack side, pins. */
final class ChainDrawing {

  /** Radius of a pin, as a fraction of the roller's diameter (common practice, no source). */
  private static final double PIN = 0.23;

  /**
   * Height of an outer plate as a fraction of an inner one (ISO 606 keeps it lower; 04C: 5.21 of
   * 6.02 mm, from memory).
   */
  private static final double OUTER = 0.84;

  private final Draft draft;
  private final ChainView view;
  private final List<Vector2D> pins;
  private final List<Pose> poses;
  private final Set<Integer> painted;
  private final int cranked;

  private ChainDrawing(Draft draft, ChainView view, ChainLay lay) {
    this.draft = draft;
    this.view = view;
    pins = lay.pins();
    poses = new ArrayList<>(pins.size());
    for (int i = 0; i < pins.size(); i++) {
      Vector2D behind = pins.get(i);
      Vector2D ahead = pins.get((i + 1) % pins.size());
      poses.add(new Pose(behind.lerp(ahead, 0.5), Bearing.of(behind.vectorTo(ahead))));
    }
    painted = new HashSet<>(lay.paintedLinks());
    cranked = crankedLink(pins.size(), painted);
  }

  static void draw(Draft draft, ChainView view, ChainLay lay) {
    ChainDrawing drawing = new ChainDrawing(draft, view, lay);
    if (view.chain().kind() == ChainKind.TOOTHED) {
      drawing.toothedPlates();
    } else {
      drawing.rollers();
      double pitch = view.pitchMm();
      drawing.plates(Ink.INNER_PLATE, Plates.waisted(pitch, view.plateMm()));
      drawing.plates(Ink.OUTER_PLATE, Plates.waisted(pitch, OUTER * view.plateMm()));
      drawing.crankedPlate();
    }
    StrandLines.draw(draft, view);
    drawing.paint();
    drawing.pins();
  }

  /**
   * The link at which an odd chain is joined: the one farthest from any painted link, or -1 in an
   * even chain.
   */
  private static int crankedLink(int links, Set<Integer> painted) {
    if (links % 2 == 0) {
      return -1;
    }
    int best = links - 1;
    int farthest = -1;
    for (int link = 0; link < links; link++) {
      int from = link;
      int nearest =
          painted.stream()
              .mapToInt(
                  p -> Math.min(Math.floorMod(p - from, links), Math.floorMod(from - p, links)))
              .min()
              .orElse(links);
      if (nearest > farthest) {
        farthest = nearest;
        best = link;
      }
    }
    return best;
  }

  private Ink inkOf(int link) {
    if (link == cranked) {
      return Ink.CRANKED_PLATE;
    }
    int turned = cranked >= 0 && link > cranked ? link + 1 : link;
    return turned % 2 == 0 ? Ink.OUTER_PLATE : Ink.INNER_PLATE;
  }

  private IntStream links() {
    return IntStream.range(0, pins.size());
  }

  private void rollers() {
    Tag tag = view.tag(Ink.ROLLER);
    pins.forEach(pin -> draft.circle(tag, pin, view.rollerMm() / 2));
  }

  private void plates(Ink ink, List<Curve> outline) {
    Tag tag = view.tag(ink);
    Stencil plate = new Stencil(outline, true);
    links()
        .filter(link -> inkOf(link) == ink && !painted.contains(link))
        .forEach(link -> draft.placed(tag, plate, poses.get(link)));
  }

  private void crankedPlate() {
    if (cranked < 0 || painted.contains(cranked)) {
      return;
    }
    double r = view.plateMm() / 2;
    draft.closed(
        view.tag(Ink.CRANKED_PLATE),
        Plates.tapered(view.pitchMm(), r, OUTER * r),
        poses.get(cranked));
    for (double at : new double[] {-0.1, 0.1}) {
      double y = at * view.pitchMm();
      draft.line(
          view.tag(Ink.CRANK_BEND),
          poses.get(cranked).apply(Vector2D.of(-0.9 * r, y)),
          poses.get(cranked).apply(Vector2D.of(0.9 * r, y)));
    }
  }

  private void toothedPlates() {
    Tag tag = view.tag(Ink.TOOTHED_PLATE);
    Stencil plate = new Stencil(Plates.toothed(view.pitchMm(), view.plateMm(), clawSide()), true);
    links()
        .filter(link -> !painted.contains(link))
        .forEach(link -> draft.placed(tag, plate, poses.get(link)));
  }

  /** The side of travel on which the claws of a toothed chain are: inside the loop. */
  private int clawSide() {
    return view.solved().travel().sign();
  }

  private void paint() {
    boolean toothed = view.chain().kind() == ChainKind.TOOTHED;
    double height = view.plateMm();
    List<Curve> outline =
        toothed
            ? Plates.toothed(view.pitchMm(), height, clawSide())
            : Plates.straight(view.pitchMm(), height);
    double aside = toothed ? -0.22 * clawSide() * height : 0;
    List<Curve> stripes = Plates.stripes(view.pitchMm(), aside, (toothed ? 0.2 : 0.36) * height);
    for (int link : painted.stream().sorted().toList()) {
      Pose pose = poses.get(link);
      draft.closed(view.tag(Ink.PAINTED_LINK), outline, pose);
      stripes.forEach(stripe -> draft.open(view.tag(Ink.PAINT_STRIPE), stripe, pose));
    }
  }

  private void pins() {
    Tag tag = view.tag(Ink.PIN);
    pins.forEach(pin -> draft.circle(tag, pin, PIN * view.rollerMm()));
  }
}
