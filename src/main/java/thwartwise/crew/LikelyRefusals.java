package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;

/**
 * The checks that refused extra weight lately, for a boat or another one with the same hull. They
 * are asked first next time; only for speed. Thread-safe.
 */
final class LikelyRefusals {
  private static final int MOST = 12;

  private List<WeightCase> latest = List.of();

  /**
   * A check of extra weight, by numbers.
   *
   * @param crew mixture of heavy and light people
   */
  record WeightCase(int check, int spot, int crew) {}

  /** The latest first. */
  synchronized List<WeightCase> latest() {
    return latest;
  }

  synchronized void remember(WeightCase refused) {
    List<WeightCase> now = new ArrayList<>(latest);
    now.remove(refused);
    now.add(0, refused);
    latest = List.copyOf(now.subList(0, Math.min(MOST, now.size())));
  }
}
