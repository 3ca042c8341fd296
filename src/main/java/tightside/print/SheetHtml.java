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

  private SheetHtml() {}

  /**
   * The whole sheet.
   *
   * @param solution of the drive at the reference position, new, to be drawn; nothing where there
   *     is nothing to draw
   */
  public static String sheet(JobSheet sheet, Optional<Solution> solution, Paper paper) {
    Map<String, Object> page = page(paper, sheet.drive(), sheet.about(), sheet.cover());
    page.put("note", sheet.note().<Object>map(n -> Map.of("note", n)).orElse(Boolean.FALSE));
    Optional<ScaledDrawing> drawing = solution.flatMap(s -> ScaledDrawing.of(s, paper));
    page.put("sections", sheet.sections().stream().map(s -> section(s, drawing, paper)).toList());
    return Template.fill("sheet.mustache", page);
  }

  /** The drawing stands behind what comes first; a note is said once in a section. */
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
        "drawing",
        section.part() == Part.CAUTIONS && drawing.isPresent()
            ? drawing(drawing.get(), paper)
            : Boolean.FALSE);
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
        "barWords", drawing.scale().barWords());
  }

  /**
   * The card.
   *
   * @param points size of its letters
   */
  public static String card(JobCard card, Paper paper, double points) {
    Map<String, Object> page = page(paper, card.drive(), card.about(), card.cover());
    page.put("points", Numbers.plain(points));
    page.put("caution", Sentences.caution());
    page.put("withCover", withCover(card.cover()));
    boolean several = card.counts().stream().map(JobCard.Run::chain).distinct().count() > 1;
    page.put("runs", card.counts().stream().map(run -> run(run, several)).toList());
    page.put("locks", card.locks());
    page.put("ways", card.ways());
    page.put("blanks", card.blanks());
    return Template.fill("card.mustache", page);
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
    page.put("css", Template.text("print.css").replace("PAGE-SIZE", paper.css()));
    page.put("drive", drive);
    page.put("head", shortened(drive));
    page.put("about", about);
    page.put("cover", "For work " + withCover(cover) + ".");
    return page;
  }

  /** What stands at the head of every page. */
  private static String shortened(String drive) {
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
