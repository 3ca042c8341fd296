package tightside.print;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tightside.drive.Seen;
import tightside.sheet.JobCard;
import tightside.sheet.JobSheet;
import tightside.sheet.Part;
import tightside.sheet.Section;
import tightside.timing.Solution;
import tightside.words.Numbers;
import tightside.words.Sentences;

/** The job sheet, or the one-page card, as a page of HTML that also prints. */
public final class SheetHtml {

  /** So many letters of a drive's name stand at the head of every page. */
  private static final int HEAD_LETTERS = 60;

  /** So many runs of a card stand under one another. */
  private static final int ONE_COLUMN = 6;

  private SheetHtml() {}

  /**
   * The whole sheet.
   *
   * @param solution of the drive at the reference position, new, to be drawn; nothing where there
   *     is nothing to draw
   * @param notProved what must be known of a drive that is only measured
   */
  public static String sheet(
      JobSheet sheet, Optional<Solution> solution, Paper paper, Optional<String> notProved) {
    Map<String, Object> page = page(paper, sheet.drive(), sheet.about(), sheet.cover());
    page.put("notProved", notProved.orElse(""));
    page.put("note", sheet.note().<Object>map(n -> Map.of("note", n)).orElse(Boolean.FALSE));
    Optional<ScaledDrawing> drawing = solution.flatMap(s -> ScaledDrawing.of(s, paper));
    page.put("drawn", drawing.isPresent());
    page.put("sections", sheet.sections().stream().map(s -> section(s, drawing, paper)).toList());
    return Template.fill("sheet.mustache", page);
  }

  /**
   * The drawing stands before the stop cards, where both can be laid aside; a note is said once in
   * a section.
   */
  private static Map<String, Object> section(
      Section section, Optional<ScaledDrawing> drawing, Paper paper) {
    boolean stop = section.part() == Part.STOP;
    Set<String> said = new HashSet<>();
    List<Map<String, Object>> rows =
        section.steps().stream().map(s -> SheetRows.row(section.part(), s, said)).toList();
    Map<String, Object> shown = new HashMap<>();
    shown.put("title", section.part().title());
    shown.put("lead", section.lead());
    shown.put("newPage", stop);
    shown.put("cards", stop ? rows : List.of());
    shown.put("steps", stop ? List.of() : rows);
    shown.put(
        "drawing", stop && drawing.isPresent() ? drawing(drawing.get(), paper) : Boolean.FALSE);
    return shown;
  }

  private static Map<String, Object> drawing(ScaledDrawing drawing, Paper paper) {
    return Map.of(
        "scale",
            drawing.toScale() ? "drawn " + drawing.scale().words() : "a schematic, not to scale",
        "left", Numbers.fixed((paper.roomAcrossMm() - drawing.widthMm()) / 2, 3),
        "width", Numbers.fixed(drawing.widthMm(), 3),
        "height", Numbers.fixed(drawing.heightMm(), 3),
        "svg", drawing.svg(),
        "labels", drawing.words(),
        "bar", drawing.toScale() ? drawing.scale().bar() : "",
        "barWords", drawing.scale().barWords(),
        "counted", drawing.counted());
  }

  /**
   * The card.
   *
   * @param points size of its letters
   * @param notProved what must be known of a drive that is only measured
   */
  public static String card(JobCard card, Paper paper, double points, Optional<String> notProved) {
    Map<String, Object> page = page(paper, card.drive(), card.about(), card.cover());
    page.put("notProved", notProved.orElse(""));
    page.put("points", Numbers.plain(points));
    page.put("caution", Sentences.caution());
    page.put("withCover", withCover(card.cover()));
    boolean several =
        card.counts().stream()
                .map(r -> r.strand().from() + " to " + r.strand().to())
                .distinct()
                .count()
            < card.counts().size();
    page.put("columns", columns(card.counts().stream().map(run -> run(run, several)).toList()));
    page.put("locks", card.locks());
    page.put("ways", card.ways());
    page.put("blanks", card.blanks().stream().map(b -> Map.of("blank", b)).toList());
    page.put("single", card.counts().size() <= ONE_COLUMN);
    return Template.fill("card.mustache", page);
  }

  /** Many runs stand in two columns. */
  private static List<Map<String, Object>> columns(List<Map<String, Object>> runs) {
    if (runs.size() <= ONE_COLUMN) {
      return List.of(Map.of("runs", runs));
    }
    int half = (runs.size() + 1) / 2;
    return List.of(
        Map.of("runs", runs.subList(0, half)), Map.of("runs", runs.subList(half, runs.size())));
  }

  private static Map<String, Object> run(JobCard.Run run, boolean several) {
    String chain = several ? run.chain() + ": " : "";
    return Map.of(
        "run", chain + run.strand().from() + " to " + run.strand().to(),
        "links", run.strand().links(),
        "between", run.strand().between(),
        "countable", run.countable());
  }

  private static Map<String, Object> page(Paper paper, String drive, String about, Seen cover) {
    Map<String, Object> page = new HashMap<>();
    page.put("css", css(paper));
    page.put("drive", drive);
    page.put("head", shortened(drive));
    page.put("about", about);
    page.put("cover", "For work " + withCover(cover) + ".");
    return page;
  }

  static String css(Paper paper) {
    return Template.text("print.css").replace("PAGE-SIZE", paper.css());
  }

  /** What stands at the head of every page. */
  static String shortened(String drive) {
    int letters = drive.codePointCount(0, drive.length());
    return letters <= HEAD_LETTERS
        ? drive
        : drive.substring(0, drive.offsetByCodePoints(0, HEAD_LETTERS)) + "…";
  }

  private static String withCover(Seen cover) {
    return switch (cover) {
      case COVER_ON -> "with the front cover on";
      case BORESCOPE -> "with the front cover off and a borescope";
      default -> "with the front cover off";
    };
  }
}
