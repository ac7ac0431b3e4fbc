package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;

/**
 * What refused something more aboard lately, of a boat or of another one with the same hull. It is
 * asked first next time; a matter of speed alone. Safe among threads.
 */
final class LikelyRefusals {
  private static final int MOST = 12;

  private List<WeightCase> latest = List.of();

  /**
   * A check of something more aboard, each by its number.
   *
   * @param crew which mixture of heavy and light people
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
