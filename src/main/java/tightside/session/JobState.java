package tightside.session;

import tightside.job.Job;
import tightside.record.Progress;

/**
 * The job on a drive.
 *
 * @param job what its owner noted for it beforehand
 * @param progress how far it is
 */
public record JobState(Job job, Progress progress) {

  /** A job of which nothing is noted and nothing done. */
  public static JobState unsaid() {
    return new JobState(Job.unsaid(), Progress.none());
  }

  public JobState with(Progress other) {
    return new JobState(job, other);
  }
}
