package tightside.survey;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** What was worked out for the last few questions. */
final class Memo<K, V> {

  /** A point, both steps away from it, and one to spare. */
  private static final int KEPT = 4;

  private final Map<K, V> known =
      new LinkedHashMap<>(8, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
          return size() > KEPT;
        }
      };

  V of(K question, Function<? super K, ? extends V> answer) {
    V value = known.get(question);
    if (value == null) {
      value = answer.apply(question);
      known.put(question, value);
    }
    return value;
  }
}
