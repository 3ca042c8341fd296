package tightside.session;

import java.util.Map;
import java.util.Optional;
import tightside.drive.Drive;
import tightside.drive.Plan;
import tightside.drive.Seen;
import tightside.lesson.LessonRun;
import tightside.survey.Adjustment;
import tightside.survey.Survey;
import tightside.timing.Seat;
import tightside.timing.State;

/** A snapshot in the making: as the one before it, until something of it is set otherwise. */
final class NextSnapshot {

  Drive drive;
  String source;
  Crank crank;
  Map<Seat, Integer> reseats;
  Map<String, Double> stretchPercent;
  Map<String, Double> heldMm;
  Map<StrandId, Count> counts;
  Seen cover;
  Look look;
  SlackSetup slack;
  JobState job;
  Optional<State> kept;
  Optional<Plan> unfinished;
  Optional<LessonRun> lesson;
  Optional<OwnForm> typed;
  Optional<Adjustment> measured;
  WhyNotes why;
  Optional<Survey> unadjusted;

  NextSnapshot(Snapshot before) {
    drive = before.drive();
    source = before.source();
    crank = before.crank();
    reseats = before.reseats();
    stretchPercent = before.stretchPercent();
    heldMm = before.heldMm();
    counts = before.counts();
    cover = before.cover();
    look = before.look();
    slack = before.slack();
    job = before.job();
    kept = before.kept();
    unfinished = before.unfinished();
    lesson = before.lesson();
    typed = before.typed();
    measured = before.measured();
    why = before.why();
    unadjusted = before.unadjusted();
  }

  Snapshot made() {
    return new Snapshot(
        drive,
        source,
        crank,
        reseats,
        stretchPercent,
        heldMm,
        counts,
        cover,
        look,
        slack,
        job,
        kept,
        unfinished,
        lesson,
        typed,
        measured,
        why,
        unadjusted);
  }
}
