package tightside.command;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

  /** What the class gets, a page a lesson; nothing of it tells what is wrong. */
  static String handout(List<LessonSheet> sheets) {
    return fill(
        "handout.mustache", Map.of("sheets", sheets.stream().map(LessonPaper::asked).toList()));
  }

  /** What the trainer keeps. */
  static String key(List<LessonSheet> sheets) {
    return fill(
        "key.mustache", Map.of("sheets", sheets.stream().map(LessonPaper::answered).toList()));
  }

  private static Map<String, Object> asked(LessonSheet sheet) {
    Map<String, Object> facts = new HashMap<>();
    facts.put("title", sheet.title());
    facts.put("belief", sheet.belief().orElse(""));
    facts.put("story", sheet.story());
    facts.put("access", sheet.accessWords());
    facts.put("belongs", sheet.belongs());
    facts.put("seen", sheet.seen());
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

  /** A picture within a page has no prologue of its own. */
  private static String inline(String svg) {
    return svg.substring(svg.indexOf("<svg"));
  }

  private static Map<String, Object> answered(LessonSheet sheet) {
    Opened key = sheet.key();
    List<String> options = sheet.closing().map(Closing::options).orElse(List.of());
    return Map.of(
        "title", sheet.title(),
        "cause", key.right().cause().words(),
        "shaft", key.right().shaftWords(),
        "way", key.right().way().words(),
        "amount", sheet.quantity().words(key.right().amount()),
        "margin", sheet.margin().words(),
        "explained",
            key.explained().stream()
                .map(e -> Map.of("part", e.part().words(), "why", e.why()))
                .toList(),
        "after", key.after(),
        "stated",
            IntStream.range(0, options.size())
                .filter(sheet::states)
                .mapToObj(options::get)
                .toList(),
        "caution", Sentences.caution());
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
