package tightside.sheet;

import java.nio.file.Path;
import java.util.Optional;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.job.Job;

/** Work on the models, for tests. */
public final class Works {

  private Works() {}

  public static Work of(String name, Seen cover) {
    Model model = ModelReader.read(Path.of("models", name)).model().orElseThrow();
    return new Work(
        model.drive(), model.engine(), model.phasers(), model.job().orElse(Job.unsaid()), cover);
  }

  /** The same with other words in it. */
  public static Work named(Work work, String name, String about, Optional<String> note) {
    Drive drive = work.drive();
    Job job = work.job();
    return new Work(
        new Drive(name, about, drive.rotation(), drive.shafts(), drive.chains()),
        work.engine(),
        work.phasers(),
        new Job(job.lockingToolPlayDegrees(), note, job.figures(), job.order(), job.bolts()),
        work.cover());
  }

  public static Work with(Work work, Job job) {
    return new Work(work.drive(), work.engine(), work.phasers(), job, work.cover());
  }
}
