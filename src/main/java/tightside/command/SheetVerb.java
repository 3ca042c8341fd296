package tightside.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.files.Model;
import tightside.files.RecordFile;
import tightside.files.RecordReader;
import tightside.files.RecordReading;
import tightside.files.RecordText;
import tightside.files.WholeFiles;
import tightside.job.Job;
import tightside.print.Form;
import tightside.print.Letters;
import tightside.print.Paper;
import tightside.print.Pdf;
import tightside.print.Printed;
import tightside.record.JobRecord;
import tightside.sheet.Work;

@Command(
    name = "sheet",
    description = {
      "Prints the job sheet, from the first count to the proof, as a PDF or as an HTML page: what to",
      "do, what is right, and where to write it. Of a job's record (.tightside-job) it prints what",
      "was entered, with time, verdict, model and seal."
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
  public Integer call() {
    return file().toString().endsWith(RecordFile.ENDING) ? print(recorded()) : super.call();
  }

  @Override
  Answer answer(Model model) {
    Printed as = printed();
    Work work =
        new Work(
            marked(model),
            model.engine(),
            model.phasers(),
            model.job().orElse(Job.unsaid()),
            seen());
    byte[] page = card ? as.card(work, notProved(model)) : as.sheet(work, notProved(model));
    write(page);
    return answer(model, as.form() == Form.PDF ? Optional.of(page) : Optional.empty());
  }

  private Printed printed() {
    Form form =
        Form.of(output)
            .orElseThrow(
                () ->
                    new Refusal(
                        "a sheet is written as PDF or HTML; give -o a name that ends in .pdf or"
                            + " .html, not "
                            + output));
    return new Printed(form, size.paper);
  }

  private void write(byte[] page) {
    try {
      WholeFiles.replace(output, page);
    } catch (IOException e) {
      throw new Refusal(e.getMessage());
    }
  }

  /** A drive that is measured and not proved says so at the head of every page. */
  private static Drive marked(Model model) {
    Drive d = model.drive();
    String head = notProved(model).isPresent() ? "Measured, not proved: " : "";
    return new Drive(head + d.name(), d.about(), d.rotation(), d.shafts(), d.chains());
  }

  /** The record of a job, as it was filled in. */
  private Answer recorded() {
    Printed as = printed();
    if (card) {
      throw new Refusal("a record is printed whole; --card is for a model");
    }
    RecordReading reading = RecordReader.read(file());
    JobRecord record =
        reading.record().orElseThrow(() -> new Refusal(String.join(" ", reading.damage())));
    byte[] page = as.record(record, reading.damage(), ZoneId.systemDefault());
    write(page);
    Optional<Integer> pages =
        as.form() == Form.PDF ? Optional.of(Pdf.pages(page)) : Optional.empty();
    String seal = RecordText.of(record).shortSeal();
    return new Answer(
        Answer.ANSWERED,
        () ->
            Json.object(
                "record", file().toString(),
                "sheet", output.toString(),
                "pages", pages.orElse(null),
                "seal", seal,
                "damage", reading.damage()),
        () -> {
          List<String> lines = new ArrayList<>(lines("job record", pages, Set.of()));
          lines.add("Its seal begins %s.".formatted(seal));
          lines.addAll(reading.damage());
          return lines;
        });
  }

  private Seen seen() {
    return switch (cover) {
      case on -> Seen.COVER_ON;
      case off -> Seen.COVER_OFF;
      case borescope -> Seen.BORESCOPE;
    };
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
