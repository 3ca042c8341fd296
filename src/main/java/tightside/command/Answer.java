package tightside.command;

import java.util.List;
import java.util.Map;

/**
 * What a verb has to say.
 *
 * @param code the exit code
 * @param json the answer for programs
 * @param text the answer for people, line by line
 */
record Answer(int code, Map<String, Object> json, List<String> text) {

  static final int ANSWERED = 0;
  static final int DRIVE_WRONG = 1;
  static final int INPUT_UNUSABLE = 2;

  Answer {
    text = List.copyOf(text);
  }
}
