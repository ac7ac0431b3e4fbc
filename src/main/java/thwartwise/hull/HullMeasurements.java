package thwartwise.hull;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * The hull as it was measured.
 *
 * @param mass bare hull, without kit, kg
 * @param centre its centre of gravity; left out, it is estimated from the shell's area
 * @param material what it is made of, when named
 * @param density swamped density of that material, kg/m³
 * @param thickness of the shell: the inside lies this much further in than the stations, m
 * @param floor height of what people stand on, m
 * @param stations aft to forward, at least three, each with the same number of points
 * @param decked lengths where the rail is not an edge that floods
 * @param skeg a fin under the keel; its wood is part of the mass
 */
public record HullMeasurements(
    double mass,
    Optional<Vector3> centre,
    Optional<Material> material,
    double density,
    double thickness,
    double floor,
    List<Station> stations,
    List<Span> decked,
    Optional<Skeg> skeg) {

  public HullMeasurements {
    stations = List.copyOf(stations);
    decked = List.copyOf(decked);
  }

  /** A copy with another mass. */
  public HullMeasurements weighing(double kilograms) {
    return new HullMeasurements(
        kilograms, centre, material, density, thickness, floor, stations, decked, skeg);
  }

  /** A copy whose centre of gravity was measured there. */
  public HullMeasurements centredAt(Vector3 other) {
    return new HullMeasurements(
        mass, Optional.of(other), material, density, thickness, floor, stations, decked, skeg);
  }

  /** A copy with another swamped density, kg/m³. */
  public HullMeasurements withDensity(double other) {
    return new HullMeasurements(
        mass, centre, material, other, thickness, floor, stations, decked, skeg);
  }

  /** A copy with that shell thickness, m. */
  public HullMeasurements withThickness(double other) {
    return new HullMeasurements(
        mass, centre, material, density, other, floor, stations, decked, skeg);
  }

  /** A copy with other stations. */
  public HullMeasurements withStations(List<Station> others) {
    return new HullMeasurements(
        mass, centre, material, density, thickness, floor, others, decked, skeg);
  }

  /**
   * The longest distance between two neighbouring stations on any line, as a share of the length.
   */
  public double longestStretch() {
    double longest = 0;
    for (int i = 0; i + 1 < stations.size(); i++) {
      longest = Math.max(longest, stretch(i));
    }
    DoubleSummaryStatistics along =
        stations.stream()
            .flatMap(s -> s.port().stream())
            .mapToDouble(Vector3::x)
            .summaryStatistics();
    return longest / (along.getMax() - along.getMin());
  }

  /** The distance from a station to the next one forward, on the line where it is longest, m. */
  public double stretch(int station) {
    List<Vector3> aft = stations.get(station).port();
    List<Vector3> fore = stations.get(station + 1).port();
    return IntStream.range(0, aft.size())
        .mapToDouble(i -> fore.get(i).x() - aft.get(i).x())
        .max()
        .orElseThrow();
  }

  /** A hull without a skeg. */
  public HullMeasurements(
      double mass,
      Optional<Vector3> centre,
      Optional<Material> material,
      double density,
      double thickness,
      double floor,
      List<Station> stations,
      List<Span> decked) {
    this(mass, centre, material, density, thickness, floor, stations, decked, Optional.empty());
  }

  /**
   * A fin under the keel, as it was measured.
   *
   * @param edge its lower edge on the middle line, aft to forward, at least two points
   * @param thickness across, m
   */
  public record Skeg(List<Vector3> edge, double thickness) {

    public Skeg {
      edge = List.copyOf(edge);
    }
  }
}
