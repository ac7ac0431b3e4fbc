package thwartwise.boat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/**
 * The readings of a boat afloat, next to the landing in calm water: m, kg and s, in the axes of the
 * boat.
 *
 * @param by who read them
 * @param withKit whether all listed kit was aboard, where it is listed; otherwise all of it was
 *     ashore
 * @param empty with nobody aboard
 * @param people who sat in it for {@code seated}
 * @param moved a weight moved across, with nobody aboard
 * @param roll with nobody aboard
 */
public record AfloatProof(
    LocalDate date,
    String by,
    boolean withKit,
    Optional<RailHeights> empty,
    List<Person> people,
    Optional<RailHeights> seated,
    Optional<MovedWeight> moved,
    Optional<TimedRoll> roll) {

  public AfloatProof {
    people = List.copyOf(people);
  }

  /**
   * Heights of the rail above the water.
   *
   * @param bow at the foremost station, on the port side
   * @param stern at the aftmost station, on the port side
   * @param port amidships
   * @param starboard amidships
   */
  public record RailHeights(double bow, double stern, double port, double starboard) {}

  /**
   * A weight set down on either side, one after the other.
   *
   * @param along its middle from the aft end
   * @param height its middle above the lowest point of the bottom
   */
  public record MovedWeight(
      double mass, double along, double height, WeightToSide toPort, WeightToSide toStarboard) {}

  /**
   * A weight on one side, and the heel with it.
   *
   * @param out its middle from the middle line
   */
  public record WeightToSide(double out, HeelMeasurement heel) {}

  /** How the heel was measured. */
  public sealed interface HeelMeasurement {

    /** By the height of the rail above the water amidships. */
    record ByRails(double port, double starboard) implements HeelMeasurement {}

    /**
     * By a plumb line.
     *
     * @param length from where it hangs to where it is read
     * @param swing of its end to the side of the weight, from where it hung before
     */
    record ByPendulum(double length, double swing) implements HeelMeasurement {}

    /**
     * By the level of a telephone, or another one.
     *
     * @param angle to the side of the weight, from what it showed before, rad
     */
    record ByLevel(double angle) implements HeelMeasurement {}
  }

  /**
   * A roll that was timed.
   *
   * @param swings whole ones, out to both sides and back
   * @param seconds for all of them
   */
  public record TimedRoll(int swings, double seconds) {
    /** The period, s. */
    public double period() {
      return seconds / swings;
    }
  }

  /** Whether there is anything to compare. */
  public boolean hasReadings() {
    return empty.isPresent() || seated.isPresent() || moved.isPresent();
  }

  /** Whether nothing is missing here that the other proof read or had aboard. */
  public boolean readsAsMuchAs(AfloatProof other) {
    return (empty.isPresent() || other.empty.isEmpty())
        && (seated.isPresent() || other.seated.isEmpty())
        && (moved.isPresent() || other.moved.isEmpty())
        && (withKit || !other.withKit);
  }

  /** The number, from aft, of the station nearest the middle of the length. */
  public static int amidships(HullMeasurements hull) {
    List<Station> stations = hull.stations();
    double middle =
        (stations.get(0).portRail().x() + stations.get(stations.size() - 1).portRail().x()) / 2;
    return IntStream.range(0, stations.size())
        .boxed()
        .min(Comparator.comparingDouble(i -> Math.abs(stations.get(i).portRail().x() - middle)))
        .orElseThrow();
  }
}
