package thwartwise.sampleboats;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Waters;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/**
 * Another boat of the same kind: every measurement stretched along, across and up. The shell keeps
 * its thickness, so the hull weighs as its skin does.
 */
record ScaledBoat(double along, double across, double up) {

  Boat of(Boat boat, String name) {
    HullMeasurements hull = boat.hull();
    HullMeasurements stretched =
        new HullMeasurements(
            Math.rint(10 * hull.mass() * skin()) / 10,
            hull.centre().map(this::point),
            hull.material(),
            hull.density(),
            hull.thickness(),
            millimetre(hull.floor() * up),
            hull.stations().stream().map(this::station).toList(),
            hull.decked(),
            hull.skeg());
    return new Boat(
        name,
        boat.water(),
        stretched,
        boat.openings(),
        boat.chambers().stream().map(this::chamber).toList(),
        boat.places().stream().map(this::place).toList(),
        boat.kit().stream().map(this::kit).toList(),
        boat.aboard(),
        boat.propulsion(),
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        boat.measuredBy(),
        boat.assumptions());
  }

  /** Bottom and sides by about the same share. */
  private double skin() {
    return along * (across + up) / 2;
  }

  private Station station(Station station) {
    return Station.mirrored(station.name(), station.port().stream().map(this::point).toList());
  }

  private Chamber chamber(Chamber c) {
    Box box = new Box(span(c.box().x(), along), span(c.box().y(), across), span(c.box().z(), up));
    Optional<Double> litres = c.measuredVolume().map(v -> v * along * across * up);
    return new Chamber(c.name(), box, c.filling(), litres, c.mirrored(), c.limberHole());
  }

  private Place place(Place p) {
    return new Place(
        p.name(),
        span(p.along(), along),
        span(p.across(), across),
        millimetre(p.z() * up),
        p.people(),
        p.posture());
  }

  private Kit kit(Kit k) {
    return new Kit(k.name(), k.mass(), point(k.at()), k.volume(), k.fastened(), k.in());
  }

  private Vector3 point(Vector3 p) {
    return Vector3.of(
        millimetre(p.x() * along), millimetre(p.y() * across), millimetre(p.z() * up));
  }

  private static Span span(Span span, double factor) {
    return new Span(millimetre(span.from() * factor), millimetre(span.to() * factor));
  }

  private static double millimetre(double metres) {
    return Double.isInfinite(metres) ? metres : Math.rint(metres * 1000) / 1000 + 0.0;
  }
}
