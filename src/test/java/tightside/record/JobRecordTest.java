package tightside.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tightside.drive.Seen;

/** A record follows a job and forgets nothing of it. */
class JobRecordTest {

  private static final Answer WRONG = new Answer("Count", "49", Verdict.WRONG, "One link too few.");
  private static final Answer RIGHT = new Answer("Count", "50", Verdict.RIGHT, "50 belong there.");

  private JobRecord record = JobRecord.begun(Jobs.head());
  private Progress progress = Progress.none();

  private static Instant at(int second) {
    return Jobs.BEGUN.plusSeconds(second);
  }

  private void go(Progress to, int second, boolean undone) {
    progress = to;
    record = record.following(to, Seen.COVER_ON, at(second), undone);
  }

  @Test
  void whateverHappensTheRecordStandsWhereTheJobStands() {
    for (long seed = 0; seed < 50; seed++) {
      Jobs jobs = new Jobs(seed);
      for (int i = 0; i < 60; i++) {
        List<Event> before = jobs.record().events();
        jobs.step();
        List<Event> after = jobs.record().events();
        assertThat(jobs.record().progress()).isEqualTo(jobs.progress());
        int kept = Math.max(0, before.size() - 1);
        assertThat(after.subList(0, kept)).isEqualTo(before.subList(0, kept));
      }
    }
  }

  @Test
  void everyAnswerStandsWithItsTimeAndVerdict() {
    go(progress.entered("a", WRONG), 1, false);
    go(progress.entered("a", RIGHT), 2, false);
    assertThat(record.events())
        .containsExactly(
            new Event.Access(at(1), Seen.COVER_ON),
            new Event.Entered(at(1), "a", WRONG),
            new Event.Entered(at(2), "a", RIGHT));
  }

  @Test
  void whatIsUndoneIsRecordedAsTakenBack() {
    go(progress.entered("a", RIGHT), 1, false);
    Progress right = progress;
    go(progress.entered("a", WRONG), 2, false);
    go(right, 3, true);
    go(Progress.none(), 4, true);
    assertThat(record.events().subList(3, 5))
        .containsExactly(
            new Event.TakenBack(at(3), "a", WRONG, Optional.of(RIGHT)),
            new Event.TakenBack(at(4), "a", RIGHT, Optional.empty()));
    assertThat(record.progress()).isEqualTo(Progress.none());
  }

  @Test
  void onlyTheLastOfWhatIsBeingTypedIsKept() {
    go(progress.typed("a", "4"), 1, false);
    go(progress.typed("a", "49"), 2, false);
    assertThat(record.events()).endsWith(new Event.Typed(at(2), "a", "49")).hasSize(2);
    go(progress.entered("a", WRONG), 3, false);
    assertThat(record.events()).endsWith(new Event.Entered(at(3), "a", WRONG)).hasSize(2);
  }

  @Test
  void aNoteThatRestedIsKeptBesideTheNextOne() {
    go(progress.noted("Chain"), 1, false);
    go(progress.noted("Chain new"), 5, false);
    go(progress.noted("Chain old"), 300, false);
    assertThat(record.events().subList(1, 3))
        .containsExactly(
            new Event.Noted(at(5), "Chain new"), new Event.Noted(at(300), "Chain old"));
  }

  @Test
  void whatChangesAfterTheEndIsTold() {
    go(progress.entered("a", WRONG), 1, false);
    go(progress.finished(List.of("Turn twice")), 2, false);
    assertThat(record.finishedAt()).contains(at(2));
    assertThat(record.afterFinishing()).isEmpty();
    go(progress.reopened(), 3, false);
    go(progress.entered("a", RIGHT), 4, false);
    go(progress.finished(List.of()), 5, false);
    assertThat(record.finishedAt()).contains(at(2));
    assertThat(record.afterFinishing())
        .containsExactly(
            new Event.Reopened(at(3)),
            new Event.Entered(at(4), "a", RIGHT),
            new Event.Finished(at(5), List.of()));
  }

  /** "abc", from the examples that NIST publishes with FIPS 180-4 (put down from memory). */
  @Test
  void theDigestIsThePublishedOne() {
    assertThat(Sha256.of("abc"))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @Test
  void aModelThatWasChangedIsNotIntact() {
    ModelText model = Jobs.head().model();
    assertThat(model.intact()).isTrue();
    assertThat(new ModelText(model.name(), "", model.text() + " ", model.sha256()).intact())
        .isFalse();
  }
}
