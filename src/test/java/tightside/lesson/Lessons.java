package tightside.lesson;

import tightside.files.Demo;
import tightside.files.Model;

/** Lessons on the demo drives. */
public final class Lessons {

  private Lessons() {}

  public static Setting setting(String model) {
    Model read = Demo.named(model);
    return new Setting(read.drive(), read.engine());
  }

  public static LessonSheet sheet(ReadyLesson lesson) {
    return lesson.on(setting(lesson.model()));
  }
}
