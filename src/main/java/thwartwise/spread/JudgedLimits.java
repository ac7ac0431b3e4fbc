package thwartwise.spread;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import thwartwise.crew.Lazy;
import thwartwise.crew.Recommendation.CrewLimit;

/**
 * The limits of each number of people as far as enough boats measured like this carry them, judged
 * when they are first asked for.
 */
public final class JudgedLimits {
  /** Of a boat that is not judged. */
  public static final JudgedLimits NONE = new JudgedLimits(List::of, rows -> rows);

  private final Supplier<List<CrewLimit>> rows;
  private final Supplier<List<CrewLimit>> withSeatings;

  /**
   * @param rows judges what decides the load
   * @param seatings judges the other seatings for lighter people, given the limits without them
   */
  JudgedLimits(
      Supplier<List<CrewLimit>> rows, Function<List<CrewLimit>, List<CrewLimit>> seatings) {
    this.rows = Lazy.of(rows);
    this.withSeatings = Lazy.of(() -> seatings.apply(this.rows.get()));
  }

  /**
   * The limits with no seating for lighter people but the one in which extra weight is carried. The
   * masses are the same as with the other seatings.
   */
  public List<CrewLimit> rows() {
    return rows.get();
  }

  /** The limits with the seatings for lighter people that are sure. */
  public List<CrewLimit> withSeatings() {
    return withSeatings.get();
  }
}
