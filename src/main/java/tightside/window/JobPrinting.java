package tightside.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import tightside.files.WholeFiles;
import tightside.print.Form;
import tightside.print.Paper;
import tightside.print.Printed;
import tightside.record.JobRecord;
import tightside.session.JobPage;
import tightside.session.Snapshot;
import tightside.sheet.Work;
import tightside.words.SurveyWords;

/** Writes the sheet, the card or the record of the job now open to a file that can be printed. */
final class JobPrinting extends VBox {

  private final Desk desk;
  private final JobKeeper keeper;
  private final Executor worker;
  private final Label said = Controls.label("", "note");
  private final Button record;
  private Paper paper = Paper.A4;

  /** Makes a file in a form, on a size of paper. */
  private interface Maker {
    byte[] of(Printed as);
  }

  JobPrinting(Desk desk, JobKeeper keeper, Executor worker) {
    this.desk = desk;
    this.keeper = keeper;
    this.worker = worker;
    getStyleClass().add("sentences");
    said.setId("job-printed");
    Controls.visible(said, false);
    record = button("Record", "Print the record as it is filled in", "job-print-record");
    record.setOnAction(e -> record());
    Button sheet = button("Sheet", "Print the job sheet", "job-print-sheet");
    sheet.setOnAction(e -> work("sheet", Printed::sheet));
    Button card = button("Card", "Print the card of one page", "job-print-card");
    card.setOnAction(e -> work("card", Printed::card));
    Map<Paper, String> sizes = new LinkedHashMap<>();
    sizes.put(Paper.A4, "A4");
    sizes.put(Paper.LETTER, "Letter");
    Segments<Paper> papers = new Segments<>("Paper", sizes, chosen -> paper = chosen);
    papers.show(paper);
    getChildren()
        .addAll(
            Controls.label("Print, as PDF or HTML", "strong"),
            Controls.flow(sheet, card, record, papers),
            said);
  }

  private static Button button(String words, String spoken, String id) {
    Button button = Controls.button(words, spoken, () -> {});
    button.setId(id);
    return button;
  }

  /** A record can be printed once there is one. */
  void show() {
    record.setDisable(keeper.keeping().record().isEmpty());
  }

  /** Makes a file of the work now on the desk. */
  private interface WorkMaker {
    byte[] of(Printed as, Work work, Optional<String> notProved);
  }

  private void work(String what, WorkMaker maker) {
    Snapshot now = desk.now();
    Work work = JobPage.work(now);
    print(
        what,
        fileName(now.drive().name()),
        () -> {
          Optional<String> notProved = now.measured().flatMap(SurveyWords::notProved);
          return as -> maker.of(as, work, notProved);
        });
  }

  private void record() {
    Keeping keeping = keeper.keeping();
    if (keeping.record().isEmpty()) {
      return;
    }
    JobRecord kept = keeping.record().get();
    var zone = keeper.setting().clock().getZone();
    print(
        "record",
        fileName(kept.head().model().name().replaceFirst("\\.ya?ml$", "")),
        () -> as -> as.record(kept, keeping.damage(), zone));
  }

  private void print(String what, String name, Supplier<Maker> maker) {
    Optional<Path> chosen = keeper.setting().chooser().print(name + "-" + what + ".pdf");
    if (chosen.isEmpty()) {
      return;
    }
    Path file = chosen.get();
    Optional<Form> form = Form.of(file);
    if (form.isEmpty()) {
      tell(
          "Nothing was written: a %s is PDF or HTML, so its name ends in .pdf or .html, not %s."
              .formatted(what, file.getFileName()));
      return;
    }
    Printed as = new Printed(form.get(), paper);
    tell("Writing the %s.".formatted(what));
    worker.execute(
        () -> {
          String sentence = write(what, file, maker.get(), as);
          Platform.runLater(() -> tell(sentence));
        });
  }

  private static String write(String what, Path file, Maker maker, Printed as) {
    try {
      WholeFiles.replace(file, maker.of(as));
      return "Wrote the %s to %s; print it at 100 %%.".formatted(what, file.getFileName());
    } catch (IOException e) {
      return "The %s was not written: %s".formatted(what, e.getMessage());
    }
  }

  private void tell(String sentence) {
    said.setText(sentence);
    Controls.visible(said, true);
  }

  private static String fileName(String name) {
    String bare =
        name.toLowerCase(java.util.Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-|-$", "");
    return bare.isEmpty() ? "job" : bare;
  }
}
