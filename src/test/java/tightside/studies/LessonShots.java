package tightside.studies;

import java.util.function.Consumer;
import tightside.lesson.Cause;
import tightside.lesson.LessonSheet;
import tightside.lesson.Lessons;
import tightside.lesson.ReadyLesson;
import tightside.lesson.Way;
import tightside.session.LessonEdits;
import tightside.session.Look;
import tightside.session.Snapshot;
import tightside.session.Turns;
import tightside.window.Desk;

/** A lesson in its stages, for pictures of the window. */
final class LessonShots {

  private LessonShots() {}

  /**
   * @param stage 0 to choose, 1 written, 2 turned, 3 explained
   */
  static Consumer<Desk> at(int stage) {
    return desk -> {
      if (stage > 0) {
        predicted(desk);
      }
      if (stage > 1) {
        desk.act(LessonEdits::commit);
        desk.act(LessonEdits::turn);
        desk.act(now -> Turns.to(now, 200));
      }
      if (stage > 2) {
        desk.act(LessonEdits::explain);
        desk.act(now -> LessonEdits.state(now, 0));
      }
    };
  }

  private static void predicted(Desk desk) {
    LessonSheet sheet = Lessons.sheet(ReadyLesson.PAINT);
    Look look = desk.now().look();
    desk.begin(LessonEdits.begun(Snapshot.opened(sheet.setting().drive(), "a"), sheet, look));
    desk.act(now -> LessonEdits.cause(now, Cause.WRONG_TOOTH));
    desk.act(now -> LessonEdits.shaft(now, "exhaust"));
    desk.act(now -> LessonEdits.way(now, Way.RETARDED));
    desk.act(now -> LessonEdits.amount(now, "10"));
  }
}
