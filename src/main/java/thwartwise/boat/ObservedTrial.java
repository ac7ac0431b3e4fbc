package thwartwise.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Filling.SealTest;

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
 * @param seats the place of each of them, by its name; without them it counts for nothing
 */
public record ObservedTrial(
    LocalDate date,
    String by,
    int people,
    double mass,
    double minutes,
    boolean level,
    boolean headsClear,
    List<String> seats) {
  /** Shorter shows nothing (judgement; as long as a leak test of a chamber). */
  public static final double LEAST_MINUTES = SealTest.LEAST_MINUTES;

  /** What sums in another order may differ by, kg. */
  private static final double NUMERIC = 1e-9;

  public ObservedTrial {
    seats = List.copyOf(seats);
  }

  public boolean failed() {
    return !level || !headsClear;
  }

  /**
   * Whether it shows anything on a day. Where a chamber counts, what was worked out of it stands,
   * and how the boat lies with that chamber lost was not seen.
   *
   * @param chamberCounts whether a chamber of the boat was shown to hold it up
   */
  public boolean counts(LocalDate day, boolean chamberCounts) {
    return date.equals(day)
        && !failed()
        && minutes >= LEAST_MINUTES
        && seats.size() == people
        && !chamberCounts;
  }

  /**
   * Whether no more people than were seen, and no more weight of them, sit in it where they were
   * seen to sit. Each of them was the first to get out and the last, so all but one and one alone
   * are covered on any seats that were taken, and no other number between; with their share of the
   * weight only, since nobody saw one as heavy as two.
   */
  public boolean covers(List<Body> others) {
    double share = mass * others.size() / people;
    boolean wasSeen = others.size() <= 1 || others.size() == people - 1 || others.size() == people;
    return wasSeen
        && others.stream().mapToDouble(Body::mass).sum() <= share + NUMERIC
        && satAt(others.stream().map(Body::place).toList());
  }

  private boolean satAt(List<String> places) {
    List<String> free = new ArrayList<>(seats);
    return places.stream().allMatch(free::remove);
  }
}
