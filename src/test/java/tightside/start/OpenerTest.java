package tightside.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What is done where no window can be opened. */
class OpenerTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int open(Runnable window) {
    return new Opener(window, new PrintWriter(out, true), new PrintWriter(err, true)).open();
  }

  @Test
  void aWindowThatWasOpenedAndClosedLeavesNothingToSay() {
    assertThat(open(() -> {})).isZero();
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void withoutADisplayItSaysSoInOneLineAndPrintsTheCountsOfTheDemo() throws IOException {
    int code =
        open(
            () -> {
              throw new UnsupportedOperationException("Unable to open DISPLAY.\n\tat nowhere");
            });
    assertThat(code).isZero();
    assertThat(err.toString().lines())
        .containsExactly(
            "tightside: there is no display to open a window on (Unable to open DISPLAY).");
    assertThat(out.toString()).contains("51", "17", "50").contains("Its picture: ");
    assertThat(Files.readString(picture())).startsWith("<").contains("<svg");
  }

  private Path picture() {
    String line =
        out.toString().lines().filter(l -> l.startsWith("Its picture: ")).findFirst().orElseThrow();
    return Path.of(line.substring("Its picture: ".length()));
  }

  @Test
  void aToolkitThatFindsNothingToDrawOnAndOneThatLacksItsLibraryAreNoDisplayEither() {
    assertThat(
            open(
                () -> {
                  throw new RuntimeException("No toolkit found");
                }))
        .isZero();
    assertThat(
            open(
                () -> {
                  throw new UnsatisfiedLinkError("libgtk-3.so.0: cannot open");
                }))
        .isZero();
    assertThat(err.toString().lines()).hasSize(2).allMatch(l -> l.contains("there is no display"));
  }

  @Test
  void anyOtherErrorIsNotTakenForAMissingDisplay() {
    assertThatThrownBy(
            () ->
                open(
                    () -> {
                      throw new IllegalStateException("a mistake of the program");
                    }))
        .hasMessage("a mistake of the program");
    assertThat(out.toString()).isEmpty();
  }
}
