package thwartwise.boat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/**
 * What was read of the boat afloat, next to the landing in calm water: m, kg and s, in the axes of
 * the boat.
 *
 * @param by who read it
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
   * The rail above the water.
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
   * A weight on one side, and how far the boat heeled.
   *
   * @param out its middle from the middle line
   */
  public record WeightToSide(double out, HeelMeasurement heel) {}

  /** How a heel was measured. */
  public sealed interface HeelMeasurement {

    /** The rail amidships above the water. */
    record ByRails(double port, double starboard) implements HeelMeasurement {}

    /**
     * A plumb line.
     *
     * @param length from where it hangs to where it is read
     * @param swing of its end to the side of the weight, from where it hung before
     */
    record ByPendulum(double length, double swing) implements HeelMeasurement {}

    /**
     * A telephone's level, or another one.
     *
     * @param angle to the side of the weight, from what it showed before, rad
     */
    record ByLevel(double angle) implements HeelMeasurement {}
  }

  /**
   * @param swings whole ones, out to both sides and back
   * @param seconds for all of them
   */
  public record TimedRoll(int swings, double seconds) {
    /** One whole swing, s. */
    public double period() {
      return seconds / swings;
    }
  }

  /** Whether there is anything to compare. */
  public boolean hasReadings() {
    return empty.isPresent() || seated.isPresent() || moved.isPresent();
  }

  /**
   * Whether nothing that the other one read, and nothing that was aboard for it, is missing here.
   */
  public boolean readsAsMuchAs(AfloatProof other) {
    return (empty.isPresent() || other.empty.isEmpty())
        && (seated.isPresent() || other.seated.isEmpty())
        && (moved.isPresent() || other.moved.isEmpty())
        && (withKit || !other.withKit);
  }

  /** The station nearest the middle of the length, by its number from aft. */
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
