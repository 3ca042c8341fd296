package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tightside.files.RecordText;
import tightside.record.Event;
import tightside.record.Head;
import tightside.record.JobRecord;
import tightside.record.ModelText;

class SheetVerbTest {

  private static final String MODEL = "models/two-cams-arm.yaml";

  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

  @TempDir private Path folder;

  private String out(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void writesPdfAndHtml() throws IOException {
    Run pdf = Run.of("sheet", MODEL, "-o", out("a.PDF"), "--cover", "on", "--json");
    assertThat(pdf.err()).isEmpty();
    assertThat(pdf.code()).isZero();
    assertThat(pdf.out()).contains("\"pages\":", "\"lettersMissing\":[]");
    assertThat(new String(Files.readAllBytes(folder.resolve("a.PDF")), StandardCharsets.ISO_8859_1))
        .startsWith("%PDF-");
    Run html = Run.of("sheet", MODEL, "-o", out("a.html"), "--paper", "letter", "--card");
    assertThat(html.out()).contains("Wrote the job card to", "a.html.");
    assertThat(Files.readString(folder.resolve("a.html"))).contains("What can I count?");
  }

  @Test
  void saysOnTheSheetThatADriveIsMeasuredOnly() throws IOException {
    Run.of("sheet", "models/measured-two-cams.yaml", "-o", out("m.html"));
    assertThat(Files.readString(folder.resolve("m.html"))).contains("Measured, not proved: Two");
  }

  @Test
  void printsTheRecordOfAJob() throws IOException {
    JobRecord record =
        JobRecord.begun(new Head(NOON, "Tightside", ModelText.of("two.yaml", "", "drive: two")))
            .with(new Event.Noted(NOON, "A note."));
    RecordText text = RecordText.of(record);
    Path file = folder.resolve("a.tightside-job");
    Files.write(file, text.bytes());
    Run whole = Run.of("sheet", file.toString(), "-o", out("a.html"));
    assertThat(whole.err()).isEmpty();
    assertThat(whole.out()).contains("Wrote the job record to", text.shortSeal());
    assertThat(Files.readString(folder.resolve("a.html"))).contains("Note: A note.", "two.yaml");
    Files.writeString(file, new String(text.bytes(), StandardCharsets.UTF_8).replace("A n", "B n"));
    Run changed = Run.of("sheet", file.toString(), "-o", out("b.html"));
    assertThat(Files.readString(folder.resolve("b.html"))).contains("is not as it was written");
    assertThat(changed.out()).contains("line 2");
    Files.writeString(file, "nothing");
    Run none = Run.of("sheet", file.toString(), "-o", out("c.html"));
    assertThat(none.code()).isEqualTo(2);
    assertThat(folder.resolve("c.html")).doesNotExist();
  }

  @Test
  void whatIsOnlyMeasuredSaysSo() throws IOException {
    Run.of("sheet", "models/measured-two-cams.yaml", "-o", out("a.html"), "--card");
    assertThat(Files.readString(folder.resolve("a.html"))).contains("Measured, not proved");
  }

  @Test
  void refusesWhatItCantWrite() throws IOException {
    Run ending = Run.of("sheet", MODEL, "-o", out("a.docx"));
    assertThat(ending.code()).isEqualTo(2);
    assertThat(ending.err()).contains(".pdf or .html");
    Run nowhere = Run.of("sheet", MODEL, "-o", out("none/a.html"), "--card");
    assertThat(nowhere.code()).isEqualTo(2);
    assertThat(nowhere.err()).contains("there is no folder");
    Run paper = Run.of("sheet", MODEL, "-o", out("a.html"), "--paper", "a3");
    assertThat(paper.code()).isEqualTo(2);
    assertThat(folder).isEmptyDirectory();
  }
}
