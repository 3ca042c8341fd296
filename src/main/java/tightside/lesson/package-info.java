/**
 * Lessons: predict, commit, turn, explain. What is wrong with the drive of a lesson lies sealed in
 * its {@link tightside.lesson.LessonSheet}; it is handed out against a written prediction and in no
 * other way, so that whatever shows a lesson can't show its answer too early.
 */
package tightside.lesson;
