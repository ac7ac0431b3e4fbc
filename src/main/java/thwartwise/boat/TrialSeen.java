package thwartwise.boat;

import java.time.LocalDate;
import java.util.List;

/**
 * What was seen when the boat was filled to the brim in knee-deep water with people sitting in it.
 * It counts on its own day, for those people and no more; what was seen to go badly holds.
 *
 * @param people how many sat in it
 * @param mass of all of them together, dressed, kg
 * @param minutes how long they sat in it full of water
 * @param level whether it floated level and clear of the bottom all the time, no chamber taking
 *     water
 * @param headsClear whether every head stayed clear of the water
 */
public record TrialSeen(
    LocalDate date,
    String by,
    int people,
    double mass,
    double minutes,
    boolean level,
    boolean headsClear) {
  /** Shorter shows nothing (judgement; as long as a leak test of a chamber). */
  public static final double LEAST_MINUTES = SealTest.LEAST_MINUTES;

  /** What sums in another order may differ by, kg. */
  private static final double NUMERIC = 1e-9;

  public boolean wentBadly() {
    return !level || !headsClear;
  }

  /** Whether it shows anything on that day. */
  public boolean countsOn(LocalDate today) {
    return date.equals(today) && !wentBadly() && minutes >= LEAST_MINUTES;
  }

  /**
   * Whether no more people than were seen, and no more weight of them, are in it; fewer people only
   * with their share of that weight, since nobody saw one as heavy as two.
   */
  public boolean covers(List<Body> others) {
    double share = mass * others.size() / people;
    return others.size() <= people
        && others.stream().mapToDouble(Body::mass).sum() <= share + NUMERIC;
  }
}
