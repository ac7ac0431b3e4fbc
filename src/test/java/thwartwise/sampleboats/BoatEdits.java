package thwartwise.sampleboats;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Waters;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/** The same boat with one thing written down otherwise. */
public final class BoatEdits {
  private BoatEdits() {}

  public static <T> List<T> replaced(List<T> all, int index, UnaryOperator<T> by) {
    List<T> edited = new ArrayList<>(all);
    edited.set(index, by.apply(edited.get(index)));
    return edited;
  }

  public static <T> List<T> without(List<T> all, int index) {
    List<T> edited = new ArrayList<>(all);
    edited.remove(index);
    return edited;
  }

  public static <T> List<T> twice(List<T> all, int index) {
    List<T> edited = new ArrayList<>(all);
    edited.add(index + 1, all.get(index));
    return edited;
  }

  public static Boat withHull(Boat boat, HullMeasurements hull) {
    return new Boat(
        boat.name(),
        boat.water(),
        hull,
        boat.openings(),
        boat.chambers(),
        boat.places(),
        boat.kit(),
        boat.aboard(),
        boat.propulsion(),
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        boat.measuredBy(),
        boat.assumptions());
  }

  public static Boat withStations(Boat boat, List<Station> stations) {
    HullMeasurements h = boat.hull();
    return withHull(boat, hull(h, h.density(), h.thickness(), h.floor(), stations));
  }

  public static Boat withDensity(Boat boat, double density) {
    HullMeasurements h = boat.hull();
    return withHull(boat, hull(h, density, h.thickness(), h.floor(), h.stations()));
  }

  public static Boat withThickness(Boat boat, double thickness) {
    HullMeasurements h = boat.hull();
    return withHull(boat, hull(h, h.density(), thickness, h.floor(), h.stations()));
  }

  public static Boat withFloor(Boat boat, double floor) {
    HullMeasurements h = boat.hull();
    return withHull(boat, hull(h, h.density(), h.thickness(), floor, h.stations()));
  }

  private static HullMeasurements hull(
      HullMeasurements h, double density, double thickness, double floor, List<Station> stations) {
    return new HullMeasurements(
        h.mass(),
        h.centre(),
        h.material(),
        density,
        thickness,
        floor,
        stations,
        h.decked(),
        h.skeg());
  }

  /** Every point of one station read otherwise, on both sides. */
  public static Boat withStation(Boat boat, int station, UnaryOperator<Vector3> reading) {
    return withStations(boat, replaced(boat.hull().stations(), station, s -> each(s, reading)));
  }

  /** One point of one station read otherwise, on both sides. */
  public static Boat withPoint(Boat boat, int station, int point, UnaryOperator<Vector3> reading) {
    return withStations(
        boat,
        replaced(
            boat.hull().stations(),
            station,
            s -> Station.mirrored(s.name(), replaced(s.port(), point, reading))));
  }

  private static Station each(Station station, UnaryOperator<Vector3> reading) {
    return Station.mirrored(station.name(), station.port().stream().map(reading).toList());
  }

  /** Every point of the hull read otherwise. */
  public static Boat withEveryStation(Boat boat, UnaryOperator<Vector3> reading) {
    return withStations(boat, boat.hull().stations().stream().map(s -> each(s, reading)).toList());
  }

  public static UnaryOperator<Vector3> outBy(double factor) {
    return p -> Vector3.of(p.x(), written(p.y() * factor), p.z());
  }

  public static UnaryOperator<Vector3> upBy(double factor) {
    return p -> Vector3.of(p.x(), p.y(), written(p.z() * factor));
  }

  public static UnaryOperator<Vector3> alongBy(double factor) {
    return p -> Vector3.of(written(p.x() * factor), p.y(), p.z());
  }

  /** As far as anybody writes down; no negative zero, which no file keeps. */
  public static double written(double value) {
    return Math.rint(value * 10_000) / 10_000 + 0.0;
  }

  public static Boat withKit(Boat boat, int index, UnaryOperator<Kit> other) {
    return boat.withKit(replaced(boat.kit(), index, other));
  }

  public static Boat withPlace(Boat boat, int index, UnaryOperator<Place> other) {
    return boat.withPlaces(replaced(boat.places(), index, other));
  }

  public static Boat withChamber(Boat boat, int index, UnaryOperator<Chamber> other) {
    return boat.withChambers(replaced(boat.chambers(), index, other));
  }
}
