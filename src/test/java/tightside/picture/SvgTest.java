package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tightside.drive.Drive;
import tightside.drive.Part;
import tightside.timing.Drives;
import tightside.timing.Solution;
import tightside.timing.State;

class SvgTest {

  /** The namespace of SVG 1.1, section 1.2. */
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  static List<?> scenes() {
    return Scenes.all().toList();
  }

  private static Document parsed(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      return factory
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    } catch (Exception e) {
      throw new AssertionError("not well-formed: " + e.getMessage(), e);
    }
  }

  private static List<Element> elements(Document document) {
    NodeList nodes = document.getElementsByTagNameNS(NAMESPACE, "*");
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static long withClass(Document document, String name) {
    return elements(document).stream()
        .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(name))
        .count();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void everyShapeIsAnElementWithItsClass(Solution solution) {
    Picture picture = Scenes.picture(solution);
    Document document = parsed(Svg.write(picture, 1000));
    assertThat(document.getDocumentElement().getNamespaceURI()).isEqualTo(NAMESPACE);
    for (Ink ink : Ink.values()) {
      assertThat(withClass(document, ink.slug()))
          .as(ink.slug())
          .isEqualTo(count(picture, tag -> tag.ink() == ink && !tag.part().equals(Part.whole())));
      assertThat(withClass(document, "legend-" + ink.slug()))
          .isEqualTo(count(picture, tag -> tag.ink() == ink && tag.part().equals(Part.whole())));
    }
    assertThat(withClass(document, "back"))
        .isEqualTo(count(picture, tag -> tag.plane() == Plane.BACK));
  }

  private static long count(Picture picture, Predicate<Tag> wanted) {
    return picture.shapes().stream().map(Shape::tag).filter(wanted).count();
  }

  @Test
  void theAnsweredExample_hasItsLinksTeethAndMarks() {
    Document document = parsed(Svg.write(Scenes.answered(State.reference()), 1000));
    assertThat(withClass(document, "outer-plate") + withClass(document, "inner-plate"))
        .isEqualTo(118 - 3);
    assertThat(withClass(document, "painted-link")).isEqualTo(3);
    assertThat(withClass(document, "mark")).isEqualTo(3);
    assertThat(withClass(document, "tooth")).isEqualTo(18 + 36 + 36);
    assertThat(withClass(document, "pin")).isEqualTo(118);
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void numbersArePlain_andTheFileIsSmall(Solution solution) {
    String svg = Svg.write(Scenes.picture(solution), 1000);
    assertThat(svg.length()).isLessThan(400_000);
    assertThat(svg).doesNotContain("NaN", "Infinity");
    for (Element e : elements(parsed(svg))) {
      for (String name : List.of("cx", "cy", "r", "x", "y", "font-size", "stroke-width")) {
        assertThat(e.getAttribute(name)).matches("|-?\\d+(\\.\\d{1,3})?");
      }
      assertThat(e.getAttribute("d")).matches("|[MLAZ0-9. -]+");
    }
  }

  @Test
  void theLocaleChangesNothing() {
    Locale before = Locale.getDefault();
    String plain = Svg.write(Scenes.answered(State.reference()), 1000);
    try {
      for (String tag : List.of("de-DE", "tr-TR", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Svg.write(Scenes.answered(State.reference()), 1000)).isEqualTo(plain);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  /** The page is as wide as asked and keeps its shape; its view box is the picture in mm. */
  @Test
  void sizeAndViewBox() {
    Picture picture = Scenes.answered(State.reference());
    Element root = parsed(Svg.write(picture, 900)).getDocumentElement();
    assertThat(root.getAttribute("width")).isEqualTo("900");
    double height = Double.parseDouble(root.getAttribute("height"));
    assertThat(height / 900)
        .isCloseTo(picture.bounds().height() / picture.bounds().width(), within(1e-3));
    assertThat(root.getAttribute("viewBox").split(" "))
        .extracting(Double::parseDouble)
        .satisfies(
            box -> {
              assertThat(box.get(2)).isCloseTo(picture.bounds().width(), within(0.01));
            });
  }

  /** The crankshaft is below the camshafts in the model, so it is below them on the page. */
  @Test
  void upIsUp() {
    Document document = parsed(Svg.write(Scenes.answered(State.reference()), 1000));
    List<Double> heights =
        elements(document).stream()
            .filter(e -> e.getAttribute("class").equals("sprocket"))
            .map(e -> Double.parseDouble(e.getAttribute("cy")))
            .toList();
    assertThat(heights.get(0)).isGreaterThan(heights.get(1) + 200);
  }

  @Test
  void wordsOfUsersAreEscaped_andComeBackAsTheyWere() {
    Drive drive = Drives.answered();
    String name = "<script>\"Tom & Jerry's\"</script> ]]> \u0001 \uD83D\uDD27";
    Drive named = new Drive(name, drive.about(), drive.rotation(), drive.shafts(), drive.chains());
    String svg = Svg.write(Scenes.picture(Scenes.solve(named, State.reference())), 1000);
    Document document = parsed(svg);
    assertThat(document.getElementsByTagNameNS(NAMESPACE, "script").getLength()).isZero();
    assertThat(document.getElementsByTagNameNS(NAMESPACE, "title").item(0).getTextContent())
        .isEqualTo(name.replace("\u0001", ""));
  }

  @Test
  void titleAndDescriptionSpeakForThePicture() {
    Document document = parsed(Svg.write(Scenes.answered(State.reference()), 1000));
    assertThat(document.getElementsByTagNameNS(NAMESPACE, "title").item(0).getTextContent())
        .isEqualTo("Two camshafts, arm on the slack side");
    assertThat(document.getElementsByTagNameNS(NAMESPACE, "desc").item(0).getTextContent())
        .contains("51 links", "50 between");
  }

  @Test
  void theSamePictureIsTheSameText() {
    assertThat(Svg.write(Scenes.answered(State.reference()), 1000))
        .isEqualTo(Svg.write(Scenes.answered(State.reference()), 1000));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "1, 1",
    "-0.001, 0",
    "0.005, 0.01",
    "-2.5, -2.5",
    "10.10, 10.1",
    "-0.06, -0.06"
  })
  void numbersHaveNoMoreDigitsThanTheyNeed(double value, String text) {
    StringBuilder out = new StringBuilder();
    Decimals.append(out, value, 2);
    assertThat(out).hasToString(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 2, 0.00",
    "-0.004, 2, 0.00",
    "9.955, 1, 10.0",
    "14.23, 1, 14.2",
    "7, 0, 7",
    "-1.5, 1, -1.5"
  })
  void fixedDecimals(double value, int decimals, String text) {
    assertThat(Decimals.fixed(value, decimals)).isEqualTo(text);
  }
}
