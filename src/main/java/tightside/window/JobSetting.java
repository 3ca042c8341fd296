package tightside.window;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Executor;
import tightside.files.JobFolder;

/**
 * What the keeping of jobs hangs on outside the window.
 *
 * @param clock tells the moment of every entry, and the zone in which it is shown
 * @param folder where a job is kept until a person says where
 * @param saver writes; nothing else waits in it
 * @param chooser asks the person for a file
 */
public record JobSetting(Clock clock, JobFolder folder, Executor saver, Chooser chooser) {

  /** Asks a person for a file of a job. */
  public interface Chooser {

    /** One to open. */
    Optional<Path> open();

    /**
     * One to save to.
     *
     * @param name as it could be called
     */
    Optional<Path> save(String name);

    /**
     * One to print to, as PDF or HTML.
     *
     * @param name as it could be called
     */
    default Optional<Path> print(String name) {
      return Optional.empty();
    }
  }

  /** Jobs kept in the system's folder for what is temporary, and nobody asked. */
  static JobSetting passing(Executor saver) {
    Path folder =
        Path.of(System.getProperty("java.io.tmpdir"), "tightside-" + ProcessHandle.current().pid());
    return new JobSetting(Clock.systemDefaultZone(), new JobFolder(folder), saver, nobody());
  }

  private static Chooser nobody() {
    return new Chooser() {
      @Override
      public Optional<Path> open() {
        return Optional.empty();
      }

      @Override
      public Optional<Path> save(String name) {
        return Optional.empty();
      }
    };
  }
}
