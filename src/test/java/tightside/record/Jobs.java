package tightside.record;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tightside.drive.Seen;

/** Invented jobs, step by step, the same for the same seed. */
public final class Jobs {

  /** When every invented job begins. */
  public static final Instant BEGUN = Instant.parse("2026-03-02T13:05:00Z");

  private static final String[] STEPS = {"before/count/main/crank/intake", "lock/tool", "prove/a"};
  private static final String[] WORDS = {
    "50", "49", "", "yes", "\u201e17,5\u201c \"mm\"\n\\", "é\t"
  };

  private final Random random;
  private JobRecord record;
  private Progress progress = Progress.none();
  private Instant now = BEGUN;

  public Jobs(long seed) {
    random = new Random(seed);
    record = JobRecord.begun(head());
  }

  /** The head of a job on an invented model. */
  public static Head head() {
    String model = "tightside: 1\nname: \"Invented \u2014 for practice\"\n";
    return new Head(
        BEGUN, "Tightside 0.1.0", ModelText.of("practice.yaml", "/home/a/practice.yaml", model));
  }

  /** A record of so many events or more. */
  public static JobRecord record(long seed, int events) {
    Jobs jobs = new Jobs(seed);
    while (jobs.record.events().size() < events) {
      jobs.step();
    }
    return jobs.record;
  }

  Progress progress() {
    return progress;
  }

  public JobRecord record() {
    return record;
  }

  /** Something happens, or is undone. */
  void step() {
    List<Progress> next = new ArrayList<>();
    String step = STEPS[random.nextInt(STEPS.length)];
    String word = WORDS[random.nextInt(WORDS.length)];
    Verdict verdict = Verdict.values()[random.nextInt(Verdict.values().length)];
    next.add(progress.entered(step, new Answer("Do " + step, word, verdict, "So it is.")));
    next.add(progress.typed(step, word));
    next.add(progress.noted(word + random.nextInt(3)));
    next.add(progress.cleared(step));
    next.add(progress.stopped("hold-back-slipped"));
    next.add(progress.wentOn());
    next.add(progress.finished(List.of("Not done: " + step)));
    next.add(progress.reopened());
    now = now.plus(Duration.ofMillis(random.nextInt(100_000)));
    Seen access = random.nextInt(6) == 0 ? Seen.COVER_OFF : record.access().orElse(Seen.COVER_ON);
    boolean undone = random.nextInt(4) == 0;
    progress = next.get(random.nextInt(next.size()));
    record = record.following(progress, access, now, undone);
  }
}
