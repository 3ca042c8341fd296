package tightside.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.files.Model;
import tightside.files.WholeFiles;
import tightside.job.Job;
import tightside.print.Letters;
import tightside.print.Paper;
import tightside.print.Pdf;
import tightside.print.SheetHtml;
import tightside.sheet.JobCard;
import tightside.sheet.JobSheet;
import tightside.sheet.Work;
import tightside.timing.Solver;
import tightside.timing.State;

@Command(
    name = "sheet",
    description = {
      "Prints the job sheet, from the first count to the proof, as a PDF or as an HTML page: what to",
      "do, what is right, and where to write it."
    })
final class SheetVerb extends ModelVerb {

  /** The sizes of paper, as they are asked for. */
  enum Size {
    a4(Paper.A4),
    letter(Paper.LETTER);

    private final Paper paper;

    Size(Paper paper) {
      this.paper = paper;
    }
  }

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "OUT.pdf|OUT.html",
      description = "The file to write; replaced whole, or not at all.")
  private Path output;

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      description = "The paper to print on; a4 unless given.")
  private Size size = Size.a4;

  @Option(
      names = "--cover",
      paramLabel = "on|off|borescope",
      description = "What can be seen; off unless given.")
  private HoldBackVerb.Cover cover = HoldBackVerb.Cover.off;

  @Option(names = "--card", description = "One page: what to count, what to lock, what goes wrong.")
  private boolean card;

  @Override
  Answer answer(Model model) {
    boolean pdf = ending(".pdf");
    if (!pdf && !ending(".html")) {
      throw new Refusal(
          "a sheet is written as PDF or HTML; give -o a name that ends in .pdf or .html, not "
              + output);
    }
    Work work =
        new Work(
            marked(model),
            model.engine(),
            model.phasers(),
            model.job().orElse(Job.unsaid()),
            seen());
    byte[] page = card ? card(work, pdf) : sheet(work, pdf);
    try {
      WholeFiles.replace(output, page);
    } catch (IOException e) {
      throw new Refusal(e.getMessage());
    }
    return answer(model, pdf ? Optional.of(page) : Optional.empty());
  }

  /** A drive that is measured and not proved says so at the head of every page. */
  private static Drive marked(Model model) {
    Drive d = model.drive();
    String head = notProved(model).isPresent() ? "Measured, not proved: " : "";
    return new Drive(head + d.name(), d.about(), d.rotation(), d.shafts(), d.chains());
  }

  private boolean ending(String ending) {
    return output.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private Seen seen() {
    return switch (cover) {
      case on -> Seen.COVER_ON;
      case off -> Seen.COVER_OFF;
      case borescope -> Seen.BORESCOPE;
    };
  }

  private byte[] sheet(Work work, boolean pdf) {
    String html =
        SheetHtml.sheet(
            JobSheet.of(work),
            Optional.of(Solver.solve(work.drive(), State.reference())),
            size.paper);
    return pdf ? Pdf.of(html) : html.getBytes(StandardCharsets.UTF_8);
  }

  private byte[] card(Work work, boolean pdf) {
    JobCard made = JobCard.of(work);
    return pdf
        ? Pdf.card(made, size.paper)
        : SheetHtml.card(made, size.paper, 12).getBytes(StandardCharsets.UTF_8);
  }

  private Answer answer(Model model, Optional<byte[]> pdf) {
    String what = card ? "job card" : "job sheet";
    Optional<Integer> pages = pdf.map(Pdf::pages);
    Set<String> lacking = pdf.isPresent() ? lacking(model) : Set.of();
    return new Answer(
        Answer.ANSWERED,
        () ->
            Json.object(
                "model",
                model.drive().name(),
                "sheet",
                output.toString(),
                "pages",
                pages.orElse(null),
                "lettersMissing",
                List.copyOf(lacking)),
        () -> lines(what, pages, lacking));
  }

  private List<String> lines(String what, Optional<Integer> pages, Set<String> lacking) {
    List<String> lines = new ArrayList<>();
    String count = pages.map(n -> ", " + n + (n == 1 ? " page" : " pages")).orElse("");
    lines.add("Wrote the " + what + " to " + output + count + ".");
    if (!lacking.isEmpty()) {
      lines.add(
          "The letters of the PDF lack "
              + String.join(" ", lacking)
              + ", which prints as #; an HTML sheet has every letter that your browser has.");
    }
    return lines;
  }

  private static Set<String> lacking(Model model) {
    StringBuilder typed = new StringBuilder(model.drive().name()).append(model.drive().about());
    model.drive().shafts().forEach(s -> typed.append(s.name()));
    model.drive().chains().forEach(c -> typed.append(c.name()));
    Job job = model.job().orElse(Job.unsaid());
    job.note().ifPresent(typed::append);
    job.figures().ifPresent(typed::append);
    job.bolts().forEach(b -> typed.append(b.name()).append(b.heldBy().orElse("")));
    return Letters.lacking(typed.toString());
  }
}
