package tightside.why;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tightside.drive.Drive;
import tightside.picture.Svg;
import tightside.print.Pdf;
import tightside.reasoning.Answer;
import tightside.reasoning.Group;
import tightside.reasoning.NextCheck;
import tightside.reasoning.Weighed;
import tightside.words.CheckWords;
import tightside.words.ExplainWords;
import tightside.words.Numbers;
import tightside.words.ReadingSentences;
import tightside.words.Sentences;
import tightside.words.WhyWords;

/** The page that says why, for the reader who was not there. */
public final class WhyPage {

  private static final int CHECKS = 3;
  private static final int BLOCK = 4;
  private static final int SVG_WIDTH = 640;

  private WhyPage() {}

  /** As a page of the web: one file, its picture inside. */
  public static String html(Drive drive, Answer answer) {
    return Mustache.compiler().escapeHTML(true).compile(template()).execute(content(drive, answer));
  }

  /** As a document to print. */
  public static byte[] pdf(Drive drive, Answer answer) {
    return Pdf.of(html(drive, answer));
  }

  private static String template() {
    try (InputStream in = WhyPage.class.getResourceAsStream("page.mustache")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new IllegalStateException("the page's template can't be read", fault);
    }
  }

  private static Map<String, Object> content(Drive drive, Answer answer) {
    Map<String, Object> content = new HashMap<>();
    content.put("drive", drive.name());
    content.put("about", drive.about().strip());
    content.put("verdict", ExplainWords.verdict(answer));
    content.put("stability", ExplainWords.stability(answer.stability()));
    content.put("jump", ExplainWords.jumpCaution(answer).stream().toList());
    content.put("readings", readings(drive, answer));
    content.put("spreads", WhyWords.spreads(drive, answer.evidence()));
    content.put("factors", WhyWords.factors() + " " + WhyWords.below());
    content.put("picture", picture(answer));
    content.put("blocks", blocks(answer));
    content.put("sums", WhyWords.sums(answer));
    content.put("notDrawn", ExplainWords.notDrawn());
    List<Map<String, Object>> checks = checks(answer);
    content.put("checks", checks);
    content.put("noChecks", checks.isEmpty() ? List.of(CheckWords.nothingWorth()) : List.of());
    content.put("leftOut", ExplainWords.leftOut());
    content.put("counted", drive.countedOnly() ? List.of(Sentences.explainLeavesOut()) : List.of());
    content.put("caution", Sentences.caution());
    return content;
  }

  private static List<Map<String, Object>> readings(Drive drive, Answer answer) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (String words : ReadingSentences.standing(drive, answer.evidence())) {
      all.add(Map.of("number", all.size() + 1, "words", words));
    }
    return all;
  }

  private static List<Map<String, Object>> picture(Answer answer) {
    return WhyPicture.of(answer).stream()
        .map(
            p -> {
              String svg = Svg.write(p, SVG_WIDTH);
              return Map.<String, Object>of(
                  "svg", svg.substring(svg.indexOf("<svg")), "words", p.description());
            })
        .toList();
  }

  /** The table, cut into so many readings at a time as a sheet is wide. */
  private static List<Map<String, Object>> blocks(Answer answer) {
    List<Map<String, Object>> blocks = new ArrayList<>();
    int readings = answer.evidence().readings().size();
    for (int from = 0; from < readings; from += BLOCK) {
      int to = Math.min(readings, from + BLOCK);
      blocks.add(
          Map.of(
              "first",
              from == 0,
              "last",
              to == readings,
              "heads",
              heads(answer, from, to),
              "rows",
              rows(answer, from, to)));
    }
    return blocks;
  }

  private static List<Map<String, Object>> heads(Answer answer, int from, int to) {
    List<Map<String, Object>> heads = new ArrayList<>();
    for (int i = from; i < to; i++) {
      String name = WhyWords.name(answer.evidence().readings().get(i));
      heads.add(Map.of("number", i + 1, "name", name));
    }
    return heads;
  }

  private static List<Map<String, Object>> rows(Answer answer, int from, int to) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Group group : WhyWords.shown(answer)) {
      String together = ExplainWords.percent(group.probability());
      for (Weighed one : WhyWords.members(group)) {
        rows.add(
            Map.of(
                "words",
                from == 0 ? ExplainWords.clauseWithAmount(one) : WhyWords.brief(one.what()),
                "prior",
                small(one.prior()),
                "factors",
                factors(one, from, to),
                "now",
                small(one.probability()),
                "together",
                together));
        together = "alike";
      }
    }
    return rows;
  }

  private static List<Map<String, Object>> factors(Weighed one, int from, int to) {
    List<Map<String, Object>> factors = new ArrayList<>();
    for (int i = from; i < to; i++) {
      factors.add(
          Map.of(
              "by", ExplainWords.factor(one.factors().get(i)),
              "off", WhyWords.briefly(one.foreseen().get(i))));
    }
    return factors;
  }

  private static String small(double probability) {
    return Numbers.fixed(100 * probability, 1) + " %";
  }

  private static List<Map<String, Object>> checks(Answer answer) {
    return answer.checks().stream()
        .filter(c -> c.bits() > CheckWords.WORTH_BITS)
        .limit(CHECKS)
        .map(WhyPage::check)
        .toList();
  }

  private static Map<String, Object> check(NextCheck check) {
    return Map.of(
        "do",
        CheckWords.doIt(check),
        "cost",
        CheckWords.cost(check),
        "held",
        check.held(),
        "expects",
        check.expects().stream()
            .map(
                e ->
                    Map.of(
                        "what", ExplainWords.brief(e.what()),
                        "outcome", CheckWords.outcome(e)))
            .toList());
  }
}
