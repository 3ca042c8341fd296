package tightside.command;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tightside.lesson.Cause;
import tightside.lesson.Closing;
import tightside.lesson.LessonSheet;
import tightside.lesson.Opened;
import tightside.lesson.Way;
import tightside.picture.Picture;
import tightside.picture.Svg;
import tightside.words.Sentences;

/** Lessons on paper: a page for the class and a page for the trainer, each a file of its own. */
final class LessonPaper {

  private static final int WIDTH = 620;

  /** Of the names in a picture, so that they can be read on paper. */
  private static final double TEXT_SCALE = 2;

  private LessonPaper() {}

  /** More lines than this are told side by side. */
  private static final int ONE_COLUMN = 6;

  /** What the class gets, a page a lesson; nothing of it tells what is wrong. */
  static String handout(List<LessonSheet> sheets, Predicate<LessonSheet> takenBefore) {
    return fill(
        "handout.mustache",
        Map.of("sheets", sheets.stream().map(s -> asked(s, takenBefore.test(s))).toList()));
  }

  /** What the trainer keeps. */
  static String key(List<LessonSheet> sheets, Predicate<LessonSheet> takenBefore) {
    return fill(
        "key.mustache",
        Map.of("sheets", sheets.stream().map(s -> answered(s, takenBefore.test(s))).toList()));
  }

  private static Map<String, Object> asked(LessonSheet sheet, boolean takenBefore) {
    Map<String, Object> facts = new HashMap<>();
    facts.put("title", sheet.title());
    facts.put("belief", sheet.belief().orElse(""));
    facts.put("story", sheet.story());
    facts.put("access", sheet.accessWords());
    facts.put("belongs", sheet.belongs());
    facts.put("seen", sheet.seen());
    facts.put("rows", rows(sheet.seen()));
    boolean crowded = sheet.seen().size() > ONE_COLUMN;
    boolean shorter = crowded || sheet.closing().isPresent();
    facts.put("crowded", crowded);
    facts.put("before", takenBefore);
    facts.put("why-lines", Collections.nCopies(shorter ? 2 : 4, ""));
    facts.put("own-lines", Collections.nCopies(shorter ? 2 : 4, ""));
    facts.put("ask", sheet.ask());
    facts.put("causes", Arrays.stream(Cause.values()).map(Cause::words).toList());
    facts.put("shafts", Stream.concat(sheet.shafts().stream(), Stream.of("none")).toList());
    facts.put("ways", Arrays.stream(Way.values()).map(Way::words).toList());
    facts.put("question", sheet.quantity().question());
    facts.put("unit", sheet.quantity().limits().unit());
    facts.put("margin", sheet.margin().words());
    Picture picture = sheet.picture(TEXT_SCALE);
    facts.put("picture", inline(Svg.write(picture, WIDTH)));
    facts.put("wide", picture.bounds().width() > picture.bounds().height());
    facts.put("closing", sheet.closing().map(Closing::question).orElse(""));
    facts.put("options", sheet.closing().map(Closing::options).orElse(List.of()));
    facts.put("caution", Sentences.caution());
    return facts;
  }

  /** Few lines one below the other, many in two columns. */
  private static List<List<String>> rows(List<String> lines) {
    if (lines.size() <= ONE_COLUMN) {
      return lines.stream().map(List::of).toList();
    }
    int half = (lines.size() + 1) / 2;
    return IntStream.range(0, half)
        .mapToObj(
            i ->
                i + half < lines.size()
                    ? List.of(lines.get(i), lines.get(i + half))
                    : List.of(lines.get(i)))
        .toList();
  }

  /** A picture within a page has no prologue of its own. */
  private static String inline(String svg) {
    return svg.substring(svg.indexOf("<svg"));
  }

  private static Map<String, Object> answered(LessonSheet sheet, boolean takenBefore) {
    Opened key = sheet.key();
    List<String> options = sheet.closing().map(Closing::options).orElse(List.of());
    return Map.ofEntries(
        Map.entry("title", sheet.title()),
        Map.entry("before", takenBefore),
        Map.entry("cause", key.right().cause().words()),
        Map.entry("shaft", key.right().shaftWords()),
        Map.entry("way", key.right().way().words()),
        Map.entry("amount", sheet.quantity().words(key.right().amount())),
        Map.entry("margin", sheet.margin().words()),
        Map.entry(
            "explained",
            key.explained().stream()
                .map(e -> Map.of("part", e.part().words(), "why", e.why()))
                .toList()),
        Map.entry("after", key.after()),
        Map.entry(
            "stated",
            IntStream.range(0, options.size())
                .filter(sheet::states)
                .mapToObj(options::get)
                .toList()),
        Map.entry("caution", Sentences.caution()));
  }

  private static String fill(String name, Map<String, Object> facts) {
    try (InputStream in = LessonPaper.class.getResourceAsStream(name)) {
      String template = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Mustache.compiler().emptyStringIsFalse(true).compile(template).execute(facts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
