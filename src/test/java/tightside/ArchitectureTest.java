package tightside;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The layers. What a package may use is listed here and nothing else: a package that is not listed
 * fails, so a new one is guarded from its first day.
 */
class ArchitectureTest {

  private static final JavaClasses ALL =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("tightside");

  private static final List<String> MATHEMATICS =
      List.of(
          "java.lang",
          "java.lang.invoke",
          "java.lang.runtime",
          "java.util",
          "java.util.function",
          "java.util.regex",
          "java.util.stream",
          "java.math",
          "org.apache.commons.geometry..",
          "org.apache.commons.numbers..",
          "org.apache.commons.statistics..",
          "org.apache.commons.rng..",
          "org.hipparchus..");

  private static final List<String> READING_AND_WRITING =
      List.of("java.io", "java.nio..", "java.text", "tools.jackson..", "org.snakeyaml.engine..");

  private static final List<String> CORE =
      List.of("geometry", "drive", "timing", "survey", "engine", "readings", "reasoning", "job");

  private record Layer(List<String> ours, List<String> others, String reason) {}

  private static final Map<String, Layer> LAYERS = layers();

  private static Map<String, Layer> layers() {
    Map<String, Layer> layers = new TreeMap<>();
    List<String> below = new ArrayList<>();
    for (String name : CORE) {
      layers.put(
          name,
          new Layer(
              List.copyOf(below),
              MATHEMATICS,
              "the core is mathematics: it knows no file, no screen and no clock, and each layer"
                  + " only those before it, so that it can be tested and trusted alone"));
      below.add(name);
    }
    layers.put(
        "record",
        new Layer(
            List.copyOf(below),
            Stream.concat(
                    MATHEMATICS.stream(),
                    Stream.of("java.time", "java.security", "java.nio.charset"))
                .toList(),
            "what was done in a job is a value too: its moments are handed to it, and it knows no"
                + " file"));
    below.add("record");
    layers.put(
        "words",
        new Layer(
            List.copyOf(below),
            Stream.concat(MATHEMATICS.stream(), Stream.of("java.io", "java.nio.charset")).toList(),
            "sentences are made from results alone, so that screen, paper and command line say the"
                + " same"));
    layers.put(
        "files",
        new Layer(
            plus(below, "words"),
            Stream.of(
                    MATHEMATICS,
                    READING_AND_WRITING,
                    List.of("java.time..", "java.util.concurrent"))
                .flatMap(List::stream)
                .toList(),
            "reading and writing knows the core but no picture and no screen"));
    layers.put(
        "picture",
        new Layer(
            plus(below, "words"),
            MATHEMATICS,
            "a picture is a list of shapes made from a solution, whoever draws it"));
    layers.put(
        "raster",
        new Layer(
            List.of("geometry", "drive", "picture"),
            MATHEMATICS,
            "pixels are made from shapes by arithmetic alone, so that no toolkit decides how fast"));
    layers.put(
        "sheet",
        new Layer(
            plus(below, "words"),
            MATHEMATICS,
            "a job sheet is content: steps and what entries say, whoever prints, shows or keeps"
                + " it"));
    layers.put(
        "lesson",
        new Layer(
            plus(below, "words", "picture"),
            Stream.concat(MATHEMATICS.stream(), Stream.of("java.io", "java.nio.charset")).toList(),
            "a lesson keeps what is wrong to itself: it draws what may be seen, and hands out the"
                + " rest against a prediction"));
    layers.put(
        "why",
        new Layer(
            plus(below, "words", "picture", "print"),
            Stream.concat(
                    MATHEMATICS.stream(),
                    Stream.of("java.io", "java.nio.charset", "com.samskivert.mustache"))
                .toList(),
            "a picture and a page of an answer, the same for window, paper and command line"));
    layers.put(
        "print",
        new Layer(
            plus(below, "words", "sheet", "files", "picture"),
            Stream.of(
                    MATHEMATICS,
                    READING_AND_WRITING,
                    List.of(
                        "java.time..",
                        "java.util.logging",
                        "com.samskivert.mustache",
                        "com.openhtmltopdf..",
                        "org.apache.pdfbox..",
                        "org.apache.fontbox.."))
                .flatMap(List::stream)
                .toList(),
            "paper knows content and pictures, and no screen; the libraries that make pages are"
                + " known here alone"));
    layers.put(
        "session",
        new Layer(
            plus(below, "words", "sheet", "lesson"),
            Stream.concat(MATHEMATICS.stream(), Stream.of("java.time..")).toList(),
            "a session is plain Java, so that all that a window shows can be tested without one"));
    layers.put(
        "command",
        new Layer(
            plus(below, "words", "sheet", "files", "picture", "lesson", "why", "print"),
            Stream.of(
                    MATHEMATICS,
                    READING_AND_WRITING,
                    List.of(
                        "java.time..",
                        "java.util.concurrent",
                        "picocli..",
                        "com.samskivert.mustache.."))
                .flatMap(List::stream)
                .toList(),
            "the command line shows what the layers below know, and knows no window"));
    layers.put(
        "window",
        new Layer(
            plus(
                below, "words", "sheet", "files", "picture", "raster", "lesson", "why", "print",
                "session"),
            Stream.of(
                    MATHEMATICS,
                    READING_AND_WRITING,
                    List.of("java.time..", "java.util.concurrent..", "javafx.."))
                .flatMap(List::stream)
                .toList(),
            "the window alone knows a toolkit; it draws sessions, and knows no command line"));
    layers.put(
        "start",
        new Layer(
            plus(below, "words", "files", "picture", "command", "window"),
            Stream.of(MATHEMATICS, READING_AND_WRITING, List.of("java.util.logging"))
                .flatMap(List::stream)
                .toList(),
            "the start stands above command line and window, which do not know each other, and"
                + " has no toolkit of its own, so that it runs where there is none"));
    return layers;
  }

  private static List<String> plus(List<String> names, String... more) {
    return Stream.concat(names.stream(), Stream.of(more)).toList();
  }

  @TestFactory
  Stream<DynamicTest> eachPackageUsesOnlyWhatIsListed() {
    return LAYERS.entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(), () -> holds(entry.getKey(), entry.getValue())));
  }

  private static void holds(String name, Layer layer) {
    String[] allowed =
        Stream.concat(
                layer.others().stream(),
                Stream.concat(Stream.of(name), layer.ours().stream()).map(n -> "tightside." + n))
            .toArray(String[]::new);
    classes()
        .that()
        .resideInAPackage("tightside." + name)
        .should()
        .onlyDependOnClassesThat(primitiveOrIn(allowed))
        .because(layer.reason())
        .allowEmptyShould(true)
        .check(ALL);
  }

  private static DescribedPredicate<JavaClass> primitiveOrIn(String... packages) {
    return new DescribedPredicate<>("are primitive or reside in " + String.join(", ", packages)) {
      private final DescribedPredicate<JavaClass> inside =
          JavaClass.Predicates.resideInAnyPackage(packages);

      @Override
      public boolean test(JavaClass type) {
        JavaClass base = type.getBaseComponentType();
        return base.isPrimitive() || inside.test(base);
      }
    };
  }

  @Test
  void everyPackageIsListed() {
    assertThat(
            ALL.stream()
                .map(c -> c.getPackageName().replaceFirst("^tightside\\.?", ""))
                .collect(Collectors.toSet()))
        .as("packages that no layer rule guards")
        .isSubsetOf(LAYERS.keySet());
  }

  @Test
  void theCoreReadsNoClockAndPrintsNothing() {
    noClasses()
        .that()
        .resideInAnyPackage(CORE.stream().map(n -> "tightside." + n).toArray(String[]::new))
        .should()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .because("the same drive and state must give the same solution, silently")
        .check(ALL);
  }

  @Test
  void recordsAndFilesAreHandedTheirClock() {
    noClasses()
        .that()
        .resideInAnyPackage("tightside.record", "tightside.files", "tightside.session")
        .should()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(java.time.Clock.class, "systemUTC")
        .orShould()
        .callMethod(java.time.Clock.class, "systemDefaultZone")
        .because("what was done when has to be tested without waiting for it")
        .check(ALL);
  }

  @Test
  void nothingInTheCoreCanBeChanged() {
    fields()
        .that()
        .areDeclaredInClassesThat()
        .resideInAnyPackage(CORE.stream().map(n -> "tightside." + n).toArray(String[]::new))
        .and()
        .doNotHaveModifier(JavaModifier.SYNTHETIC)
        .should()
        .beFinal()
        .because("values that never change can be shared, compared and undone without thought")
        .check(ALL);
  }
}
