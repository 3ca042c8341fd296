package tightside.start;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import tightside.command.Tightside;
import tightside.window.BenchApp;

/**
 * Where the program starts. It is no JavaFX application itself, so that it runs from a single jar
 * and on computers that have no display.
 */
public final class Main {

  private Main() {}

  public static void main(String[] words) {
    PrintWriter out = writer(System.out);
    PrintWriter err = writer(System.err);
    int code =
        words.length > 0
            ? Tightside.run(words, out, err)
            : new Opener(BenchApp::open, out, err).open();
    out.flush();
    err.flush();
    System.exit(code);
  }

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(stream, false, StandardCharsets.UTF_8);
  }
}
