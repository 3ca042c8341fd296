package tightside.start;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.logging.Level;
import java.util.logging.Logger;
import tightside.command.Tightside;
import tightside.drive.Drive;
import tightside.files.Demo;
import tightside.files.WholeFiles;
import tightside.picture.DrivePicture;
import tightside.picture.PictureOptions;
import tightside.picture.Svg;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * Opens the window, or does what can be done without one.
 *
 * @param window opens it and returns when it is closed
 */
record Opener(Runnable window, PrintWriter out, PrintWriter err) {

  private static final int DONE = 0;
  private static final int FAILED = 2;

  /** Kept, for a logger that nobody holds forgets its level. */
  private static final Logger TOOLKIT = Logger.getLogger("javafx");

  private static final int PICTURE_WIDTH = 1000;

  /**
   * @return the exit code
   */
  int open() {
    TOOLKIT.setLevel(Level.SEVERE);
    try {
      window.run();
      return DONE;
    } catch (UnsupportedOperationException | LinkageError e) {
      return without(reason(e));
    } catch (RuntimeException e) {
      if (toolkitMissing(e)) {
        return without(reason(e));
      }
      throw e;
    }
  }

  /** What the toolkit says where it finds a display but can't draw on it. */
  private static boolean toolkitMissing(RuntimeException e) {
    return String.valueOf(e.getMessage()).contains("No toolkit found");
  }

  private static String reason(Throwable e) {
    String message = String.valueOf(e.getMessage()).strip();
    return message.lines().findFirst().orElse("").replaceFirst("[.\\s]+$", "");
  }

  private int without(String reason) {
    err.println("tightside: there is no display to open a window on (" + reason + ").");
    err.flush();
    int code = Tightside.run(new String[0], out, err);
    return picture() ? code : FAILED;
  }

  private boolean picture() {
    Drive drive = Demo.model().drive();
    String svg =
        Svg.write(
            DrivePicture.of(Solver.of(drive).solve(State.reference()), PictureOptions.full()),
            PICTURE_WIDTH);
    Path file = Path.of(System.getProperty("java.io.tmpdir"), "tightside-demo.svg");
    try {
      WholeFiles.replace(file, svg.getBytes(StandardCharsets.UTF_8));
      out.println();
      out.println("Its picture: " + file);
      return true;
    } catch (IOException e) {
      err.println("tightside: " + e.getMessage());
      return false;
    }
  }
}
