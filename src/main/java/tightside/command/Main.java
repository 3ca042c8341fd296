package tightside.command;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Where the program starts. */
public final class Main {

  private Main() {}

  public static void main(String[] words) {
    PrintWriter out = writer(System.out);
    PrintWriter err = writer(System.err);
    int code = Tightside.run(words, out, err);
    out.flush();
    err.flush();
    System.exit(code);
  }

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(stream, false, StandardCharsets.UTF_8);
  }
}
