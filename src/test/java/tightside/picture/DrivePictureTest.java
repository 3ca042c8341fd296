package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.Part;
import tightside.drive.RouteEntry;
import tightside.drive.Sprocket;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.geometry.PitchCircle;
import tightside.geometry.Rotation;
import tightside.timing.ChainSolution;
import tightside.timing.Drives;
import tightside.timing.Solution;
import tightside.timing.State;
import tightside.timing.State.Arrived;
import tightside.timing.Strand;

class DrivePictureTest {

  /** Directions read back from shapes: a thousandth of a degree is 0.001 mm on these sprockets. */
  private static final Offset<Double> DEGREES = within(1e-3);

  private static final Ink[] LINKS = {
    Ink.INNER_PLATE, Ink.OUTER_PLATE, Ink.CRANKED_PLATE, Ink.TOOTHED_PLATE, Ink.PAINTED_LINK
  };

  static List<?> scenes() {
    return Scenes.all().toList();
  }

  private static <T extends Shape> List<T> of(Part part, List<T> shapes) {
    return shapes.stream().filter(shape -> shape.tag().part().equals(part)).toList();
  }

  private static List<Vector2D> pins(Picture picture, Chain chain) {
    return of(Part.chain(chain.name()), Scenes.shapes(picture, Shape.Circle.class, Ink.PIN))
        .stream()
        .map(Shape.Circle::centre)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void everyChainHasItsLinks_oneCrankedWhereTheyAreOdd(Solution solution) {
    Picture picture = Scenes.picture(solution);
    for (Chain chain : solution.drive().chains()) {
      Part part = Part.chain(chain.name());
      assertThat(of(part, Scenes.shapes(picture, Shape.Run.class, LINKS))).hasSize(chain.links());
      assertThat(pins(picture, chain)).hasSize(chain.links());
      boolean cranked = chain.links() % 2 == 1 && chain.kind() != ChainKind.TOOTHED;
      assertThat(of(part, Scenes.shapes(picture, Shape.Run.class, Ink.CRANKED_PLATE)))
          .hasSize(cranked ? 1 : 0);
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void everySprocketHasItsTeeth(Solution solution) {
    Picture picture = Scenes.picture(solution);
    List<Shape.Run> teeth = Scenes.shapes(picture, Shape.Run.class, Ink.TOOTH);
    for (Chain chain : solution.drive().chains()) {
      for (int place : chain.sprocketPlaces()) {
        assertThat(of(Part.route(chain.name(), place), teeth))
            .hasSize(chain.sprocketAt(place).teeth());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void asManyLinksArePaintedAsThereAreMarks(Solution solution) {
    Picture picture = Scenes.picture(solution);
    for (Chain chain : solution.drive().chains()) {
      long marks = chain.sprockets().stream().filter(s -> s.mark().isPresent()).count();
      assertThat(
              of(
                  Part.chain(chain.name()),
                  Scenes.shapes(picture, Shape.Run.class, Ink.PAINTED_LINK)))
          .hasSize((int) marks);
    }
  }

  /**
   * A pin stands one pitch from the next: exactly, on a sprocket and on a straight run. Where one
   * passes into the other the path counts arc and straight, the pins stand across; with a share f
   * of the pitch on the arc and t = pi/z they are p (1 + t^2 (f/6 - 2f^3/3 + f^4/2)) apart, which
   * is t^2/27 too far at most. Round a sharp end of a face a link cuts the corner, and a chain with
   * slack is drawn along its taut path: there it is near, no more.
   */
  @ParameterizedTest
  @MethodSource("scenes")
  void pinsStandAPitchApart(Solution solution) {
    Picture picture = Scenes.picture(solution);
    for (ChainSolution solved : solution.chains()) {
      Chain chain = solved.chain();
      double pitch = solved.fit().path().orElseThrow().pitchMm();
      double least = chain.sprockets().stream().mapToInt(Sprocket::teeth).min().orElseThrow();
      double passing = Math.pow(Math.PI / least, 2) / 26;
      List<Vector2D> ends = faceEnds(solved);
      List<Vector2D> pins = pins(picture, chain);
      for (int i = 0; i < pins.size(); i++) {
        Vector2D pin = pins.get(i);
        Vector2D next = pins.get((i + 1) % pins.size());
        double tolerance = passing;
        if (sprocketUnder(solution.drive(), solved, pin)
            .filter(sprocketUnder(solution.drive(), solved, next).orElse(-1)::equals)
            .isPresent()) {
          tolerance = 1e-9;
        } else if (PictureWords.trouble(solved).isPresent()
            || ends.stream().anyMatch(end -> end.distance(pin) < 2 * pitch)) {
          tolerance = 0.06;
        }
        assertThat(pin.distance(next) / pitch).isCloseTo(1, within(tolerance));
      }
    }
  }

  private static List<Vector2D> faceEnds(ChainSolution solved) {
    double out = solved.tensioner().map(t -> t.extensionMm()).orElse(0.0);
    return solved.chain().route().stream()
        .filter(Face.class::isInstance)
        .map(f -> f instanceof Tensioner t ? t.curveAt(out) : ((Face) f).curve())
        .flatMap(curve -> Stream.of(curve.start(), curve.end()))
        .toList();
  }

  /** The place of the sprocket on whose pitch circle a point lies. */
  private static Optional<Integer> sprocketUnder(
      Drive drive, ChainSolution solved, Vector2D point) {
    double pitch = solved.fit().path().orElseThrow().pitchMm();
    return solved.chain().sprocketPlaces().stream()
        .filter(
            place -> {
              double radius =
                  new PitchCircle(solved.chain().sprocketAt(place).teeth(), pitch).radiusMm();
              return Math.abs(centre(drive, solved.chain(), place).distance(point) - radius) < 1e-7;
            })
        .findFirst();
  }

  private static Vector2D centre(Drive drive, Chain chain, int place) {
    return drive.shaft(chain.sprocketAt(place).shaft()).orElseThrow().at();
  }

  /** Every pin on a sprocket lies in the middle of a gap: half a tooth from two teeth. */
  @ParameterizedTest
  @MethodSource("scenes")
  void pinsLieInTheGapsBetweenTeeth(Solution solution) {
    Picture picture = Scenes.picture(solution);
    List<Shape.Run> teeth = Scenes.shapes(picture, Shape.Run.class, Ink.TOOTH);
    for (ChainSolution solved : solution.chains()) {
      Chain chain = solved.chain();
      for (Vector2D pin : pins(picture, chain)) {
        sprocketUnder(solution.drive(), solved, pin)
            .ifPresent(
                place -> {
                  Vector2D centre = centre(solution.drive(), chain, place);
                  Bearing tooth = tip(of(Part.route(chain.name(), place), teeth).get(0), centre);
                  double pitches =
                      tooth.turnTo(Bearing.of(centre.vectorTo(pin)), Rotation.CLOCKWISE)
                          * chain.sprocketAt(place).teeth()
                          / 360;
                  assertThat(pitches - Math.floor(pitches)).isCloseTo(0.5, within(1e-6));
                });
      }
    }
  }

  /** The bearing of the middle of a tooth's outline from the sprocket's centre. */
  private static Bearing tip(Shape.Run tooth, Vector2D centre) {
    Vector2D middle =
        tooth.curves().get(0).from().lerp(tooth.curves().get(tooth.curves().size() - 1).to(), 0.5);
    return Bearing.of(centre.vectorTo(middle));
  }

  private static Bearing pointing(Picture picture, Ink ink, int place) {
    Shape.Run triangle =
        of(Part.route("main", place), Scenes.shapes(picture, Shape.Run.class, ink)).get(0);
    Vector2D tip = triangle.curves().get(0).from();
    Vector2D base = triangle.curves().get(1).from().lerp(triangle.curves().get(1).to(), 0.5);
    return Bearing.of(base.vectorTo(tip));
  }

  /** Bearing from a sprocket's centre to the middle of the painted link nearest to it. */
  private static Bearing paint(Picture picture, Vector2D centre) {
    return Scenes.shapes(picture, Shape.Run.class, Ink.PAINTED_LINK).stream()
        .map(link -> link.bounds().centre())
        .min((a, b) -> Double.compare(a.distance(centre), b.distance(centre)))
        .map(middle -> Bearing.of(centre.vectorTo(middle)))
        .orElseThrow();
  }

  private static double turn(Bearing from, Bearing to) {
    return from.signedTurnTo(to, Rotation.CLOCKWISE);
  }

  private static final List<Integer> MARKED = List.of(0, 2, 3);

  private static Vector2D centre(int place) {
    return centre(Drives.answered(), Drives.chain(Drives.answered()), place);
  }

  /** The answered example's marks are given to 0.01 degrees; a link lies over its mark as near. */
  @Test
  void asItShouldBe_markPointerToothAndPaintLieInLine() {
    Picture picture = Scenes.answered(State.reference());
    List<Shape.Run> teeth = Scenes.shapes(picture, Shape.Run.class, Ink.TOOTH);
    for (int place : MARKED) {
      Bearing mark = Drives.chain(Drives.answered()).sprocketAt(place).mark().orElseThrow();
      assertThat(turn(mark, pointing(picture, Ink.MARK, place))).isCloseTo(0, DEGREES);
      assertThat(turn(mark.plus(180), pointing(picture, Ink.POINTER, place))).isCloseTo(0, DEGREES);
      assertThat(turn(mark, paint(picture, centre(place)))).isCloseTo(0, within(0.02));
      assertThat(turn(mark, tip(of(Part.route("main", place), teeth).get(0), centre(place))))
          .isCloseTo(0, DEGREES);
    }
    assertThat(Scenes.shapes(picture, Shape.class, Ink.GHOST, Ink.ERROR)).isEmpty();
  }

  /** One tooth of 36 is ten degrees of the camshaft. */
  @Test
  void exhaustATooth_ahead_itsMarkLeavesPaintAndGhostByTenDegrees() {
    Picture picture = Scenes.answered(Scenes.reseated("exhaust", 1));
    Bearing ghost = pointing(picture, Ink.GHOST, 3);
    assertThat(turn(ghost, pointing(picture, Ink.MARK, 3))).isCloseTo(10, DEGREES);
    assertThat(turn(ghost, paint(picture, centre(3)))).isCloseTo(0, within(0.02));
    assertThat(of(Part.route("main", 3), Scenes.shapes(picture, Shape.class, Ink.GHOST)))
        .hasSize(1);
    assertThat(of(Part.route("main", 2), Scenes.shapes(picture, Shape.class, Ink.GHOST))).isEmpty();
    assertThat(words(picture))
        .contains("10.00 cam degrees", "advanced, 1.00 tooth", "18 links", "17 between");
  }

  /** The answered example at 0.5 %: 2.53 and 1.88 degrees late. Marks keep their painted links. */
  @Test
  void stretched_marksStandBackWithTheirLinks() {
    Picture picture = Scenes.answered(State.reference().stretched("main", 0.5));
    double[] late = {0, 0, -2.53, -1.88};
    for (int place : List.of(2, 3)) {
      assertThat(turn(pointing(picture, Ink.GHOST, place), pointing(picture, Ink.MARK, place)))
          .isCloseTo(late[place], within(0.005));
      assertThat(turn(pointing(picture, Ink.MARK, place), paint(picture, centre(place))))
          .isCloseTo(0, within(0.02));
    }
    assertThat(words(picture)).contains("1.88 cam degrees", "2.53 cam degrees");
  }

  /** The crank turns 40 degrees, a camshaft 20; paint and marks go together, pointers stay. */
  @Test
  void turnedOn_marksAndPaintTravelTogether() {
    Picture before = Scenes.answered(State.reference());
    Picture after = Scenes.answered(State.reference().turnedTo(40, Arrived.FORWARD));
    double[] turned = {40, 0, 20, 20};
    for (int place : MARKED) {
      assertThat(turn(pointing(before, Ink.MARK, place), pointing(after, Ink.MARK, place)))
          .isCloseTo(turned[place], DEGREES);
      assertThat(turn(pointing(before, Ink.POINTER, place), pointing(after, Ink.POINTER, place)))
          .isCloseTo(0, DEGREES);
      assertThat(turn(pointing(after, Ink.MARK, place), paint(after, centre(place))))
          .isCloseTo(0, within(0.02));
    }
  }

  /** The answered example realigns after 118 crank turns, and not after two. */
  @Test
  void afterItsCycleTheSamePaintLiesOverTheSameMarks() {
    assertThat(farthestPin(118)).isLessThan(1e-6);
    assertThat(farthestPin(2)).isGreaterThan(8);
  }

  private static double farthestPin(int turns) {
    Chain chain = Drives.chain(Drives.answered());
    List<Vector2D> then = pins(Scenes.answered(State.reference()), chain);
    List<Vector2D> now =
        pins(Scenes.answered(State.reference().turnedTo(360.0 * turns, Arrived.FORWARD)), chain);
    return IntStream.range(0, then.size())
        .mapToDouble(i -> then.get(i).distance(now.get(i)))
        .max()
        .orElseThrow();
  }

  private static List<String> words(Picture picture) {
    return Scenes.shapes(picture, Shape.Text.class).stream().map(Shape.Text::words).toList();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void everyStrandSaysItsLinksBothWays_andWhichSideItIs(Solution solution) {
    Picture picture = Scenes.picture(solution);
    for (ChainSolution solved : solution.chains()) {
      for (Strand strand : solved.strands()) {
        Part part = Part.route(solved.chain().name(), strand.fromPlace());
        assertThat(of(part, Scenes.shapes(picture, Shape.Text.class)))
            .extracting(Shape.Text::words)
            .contains(
                strand.links() + " links",
                (strand.links() - 1) + " between",
                Pull.of(solved, solution.state(), strand).words(Optional.empty()).get(0));
        assertThat(of(part, Scenes.shapes(picture, Shape.Run.class, Ink.TIGHT, Ink.SLACK)))
            .extracting(shape -> shape.tag().ink())
            .containsExactly(Pull.of(solved, solution.state(), strand).line());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void nothingLiesOutsideTheBounds(Solution solution) {
    Picture picture = Scenes.picture(solution);
    assertThat(picture.shapes())
        .allMatch(shape -> picture.bounds().holds(shape.bounds().grown(2 * picture.lineMm())));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void wordsHideNeitherOtherWordsNorTheChain(Solution solution) {
    Picture picture = Scenes.picture(solution);
    List<Shape.Text> texts = Scenes.shapes(picture, Shape.Text.class);
    List<Shape.Circle> pins = Scenes.shapes(picture, Shape.Circle.class, Ink.PIN);
    for (int i = 0; i < texts.size(); i++) {
      Bounds box = texts.get(i).bounds().grown(-0.05);
      for (Shape.Text other : texts.subList(0, i)) {
        assertThat(box.overlaps(other.bounds())).as(texts.get(i) + " on " + other).isFalse();
      }
      for (Shape.Circle pin : pins) {
        assertThat(box.touchedBy(pin.centre(), pin.radiusMm())).as(texts.get(i).words()).isFalse();
      }
    }
  }

  /** A plunger shows one notch for every step that it has passed. */
  @Test
  void asManyNotchesAsStepsPassed() {
    Picture picture = Scenes.answered(State.reference());
    assertThat(Scenes.shapes(picture, Shape.class, Ink.RATCHET_STEP)).hasSize(9);
    assertThat(words(picture)).contains("9 ratchet steps", "14.2 of 28.0 mm out");
  }

  @Test
  void aChainThatDoesNotFitIsNotDrawn_andThePictureSaysWhy() {
    Drive drive = Drives.answered();
    Chain shorter = Drives.chain(drive).withLinks(112);
    Drive wrong =
        new Drive(drive.name(), drive.about(), drive.rotation(), drive.shafts(), List.of(shorter));
    Picture picture = Scenes.picture(Scenes.solve(wrong, State.reference()));
    assertThat(Scenes.shapes(picture, Shape.class, LINKS)).isEmpty();
    assertThat(Scenes.shapes(picture, Shape.class, Ink.TOOTH)).hasSize(18 + 36 + 36);
    assertThat(Scenes.shapes(picture, Shape.class, Ink.FACE)).hasSize(2);
    assertThat(Scenes.shapes(picture, Shape.Text.class, Ink.WARNING))
        .extracting(Shape.Text::words)
        .singleElement()
        .asString()
        .matches("Chain main is not drawn: too short by \\d+\\.\\d mm\\.");
  }

  @Test
  void aMarkThatIsNotUnderTheChainIsSaid() {
    Drive drive = Drives.answered();
    Chain chain = Drives.chain(drive);
    List<RouteEntry> route = new ArrayList<>(chain.route());
    route.set(2, chain.sprocketAt(2).withMark(Optional.of(new Bearing(120))));
    Drive wrong =
        new Drive(
            drive.name(),
            drive.about(),
            drive.rotation(),
            drive.shafts(),
            List.of(chain.withRoute(route)));
    Picture picture = Scenes.picture(Scenes.solve(wrong, State.reference()));
    assertThat(Scenes.shapes(picture, Shape.class, LINKS)).isEmpty();
    assertThat(words(picture))
        .contains("Chain main is not drawn: it does not lie over the mark of intake.");
  }

  @Test
  void outOfTravelIsSaidInThePicture() {
    assertThat(words(Scenes.answered(State.reference().stretched("main", 2))))
        .anyMatch(line -> line.startsWith("Chain main: tensioner out of travel, "));
  }

  @Test
  void theStageBehindIsDrawnFirstAndLighter_unlessAskedForInFront() {
    Solution solution = Scenes.solve(PictureDrives.threeChains(), State.reference());
    Picture picture = Scenes.picture(solution);
    assertThat(chainsInPlane(picture, Plane.BACK)).containsOnly(Part.chain("primary"));
    List<Plane> planes =
        picture.shapes().stream()
            .filter(shape -> shape.tag().ink() == Ink.PIN)
            .map(shape -> shape.tag().plane())
            .distinct()
            .toList();
    assertThat(planes).containsExactly(Plane.BACK, Plane.FRONT);
    Picture other = DrivePicture.of(solution, PictureOptions.full().withFront("primary"));
    assertThat(chainsInPlane(other, Plane.FRONT)).containsOnly(Part.chain("primary"));
    assertThat(chainsInPlane(other, Plane.BACK)).hasSize(2);
  }

  private static Set<Part> chainsInPlane(Picture picture, Plane plane) {
    return Scenes.shapes(picture, Shape.Circle.class, Ink.PIN).stream()
        .filter(shape -> shape.tag().plane() == plane)
        .map(shape -> shape.tag().part())
        .collect(Collectors.toSet());
  }

  /** A toothed chain's claws lie inside the loop, toward its sprockets. */
  @Test
  void theClawsOfAToothedChainReachForTheSprocket() {
    Picture picture = Scenes.picture(Scenes.solve(PictureDrives.toothed(), State.reference()));
    for (Shape.Run link : Scenes.shapes(picture, Shape.Run.class, Ink.TOOTHED_PLATE)) {
      Vector2D crotch = link.curves().get(0).from();
      Vector2D back = link.curves().get(5).from().lerp(link.curves().get(5).to(), 0.5);
      Vector2D middle = Vector2D.of(0, 180);
      assertThat(crotch.distance(middle)).isLessThan(back.distance(middle));
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void theSameSolutionGivesTheSamePicture(Solution solution) {
    assertThat(Scenes.picture(solution)).isEqualTo(Scenes.picture(solution));
  }

  @Test
  void everyOutlineRunsWithoutAGap() {
    Picture picture = Scenes.picture(Scenes.solve(PictureDrives.odd(), State.reference()));
    for (Shape.Run path : Scenes.shapes(picture, Shape.Run.class)) {
      List<Curve> curves = path.curves();
      for (int i = path.closed() ? 0 : 1; i < curves.size(); i++) {
        Vector2D end = curves.get((i + curves.size() - 1) % curves.size()).to();
        assertThat(curves.get(i).from().distance(end)).isLessThan(1e-6);
      }
    }
  }

  /** Proportions at the edge of what a model may hold still give a picture, fit or not. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.5", "0.5, 7.9", "7.2, 0.5", "7.2, 7.9", "30, 5", "120, 7.9"})
  void oddProportionsStillMakeAPicture(double plateHeight, double roller) {
    Drive drive = Drives.answered();
    Chain chain = Drives.chain(drive);
    for (ChainKind kind : ChainKind.values()) {
      Chain odd = new Chain("main", kind, 8, chain.links(), plateHeight, roller, chain.route());
      Drive changed =
          new Drive(drive.name(), drive.about(), drive.rotation(), drive.shafts(), List.of(odd));
      Picture picture = Scenes.picture(Scenes.solve(changed, State.reference()));
      assertThat(Scenes.shapes(picture, Shape.class, Ink.TOOTH)).hasSize(18 + 36 + 36);
      assertThat(picture.shapes()).allMatch(shape -> picture.bounds().holds(shape.bounds()));
    }
  }

  @Test
  void withoutWordsThereAreNone() {
    Solution solution = Scenes.solve(Drives.answered(), State.reference());
    Picture picture = DrivePicture.of(solution, PictureOptions.full().withoutWords());
    assertThat(words(picture)).isEmpty();
  }

  @Test
  void theDescriptionTellsWhatThePictureShows() {
    assertThat(Scenes.answered(Scenes.reseated("exhaust", 1)).description())
        .contains(
            "crankshaft turns clockwise",
            "Chain main, intake to exhaust: 18 links, 17 between, painted: 16 between, tight side.",
            "exhaust: 10.00 cam degrees advanced.",
            "intake: right.");
  }
}
