package thwartwise.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Filling.SealTest;

/**
 * A trial: the boat was filled to the brim in knee-deep water with people sitting in it. It counts
 * on its own day, for those people and no more; a failure counts until something changes.
 *
 * @param people how many sat in it
 * @param mass of all of them together, dressed, kg
 * @param minutes how long they sat in it full of water
 * @param level whether it floated level and clear of the bottom all the time, no chamber taking
 *     water
 * @param headsClear whether every head stayed clear of the water
 * @param seats the place of each of them, by its name; without them the trial does not count
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
  /** A shorter trial shows nothing (judgement; as long as a leak test of a chamber). */
  public static final double LEAST_MINUTES = SealTest.LEAST_MINUTES;

  /** The difference that sums in another order may have, kg. */
  private static final double NUMERIC = 1e-9;

  public ObservedTrial {
    seats = List.copyOf(seats);
  }

  public boolean failed() {
    return !level || !headsClear;
  }

  /**
   * Whether it counts on a day. For a boat with a chamber that counts, the computation stands,
   * because a trial does not show the boat with that chamber lost.
   *
   * @param chamberCounts whether evidence shows that a chamber holds the boat up
   */
  public boolean counts(LocalDate day, boolean chamberCounts) {
    return date.equals(day)
        && !failed()
        && minutes >= LEAST_MINUTES
        && seats.size() == people
        && !chamberCounts;
  }

  /**
   * Whether these people were covered: no more people than in the trial, no more mass, on the seats
   * of the trial. Each of them was the first to get out and the last, so all but one, and one
   * alone, are covered on any of those seats, and no number between; each with a share of the mass
   * only, because one person as heavy as two was not seen.
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
