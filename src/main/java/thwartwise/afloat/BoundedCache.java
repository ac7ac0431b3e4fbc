package thwartwise.afloat;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Answers by what decides them, as many as there is room for. Safe among threads: two that ask at
 * once may both work it out, and neither waits for the other.
 */
final class BoundedCache<K, V> {
  private final int most;
  private final Map<K, V> answers = new ConcurrentHashMap<>();

  BoundedCache(int most) {
    this.most = most;
  }

  V of(K key, Supplier<V> answer) {
    V before = answers.get(key);
    if (before != null) {
      return before;
    }
    V now = answer.get();
    if (answers.size() < most) {
      answers.put(key, now);
    }
    return now;
  }
}
