package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetVerbTest {

  private static final String MODEL = "models/two-cams-arm.yaml";

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
