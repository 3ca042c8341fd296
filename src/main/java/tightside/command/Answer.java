package tightside.command;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What a verb has to say; only what is asked for is put together.
 *
 * @param code the exit code
 * @param json the answer for programs
 * @param text the answer for people, line by line
 */
record Answer(int code, Supplier<Map<String, Object>> json, Supplier<List<String>> text) {

  static final int ANSWERED = 0;
  static final int DRIVE_WRONG = 1;
  static final int INPUT_UNUSABLE = 2;
}
