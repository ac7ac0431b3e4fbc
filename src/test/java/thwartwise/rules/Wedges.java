package thwartwise.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/** Hulls of straight lines that are no boxes; for tests. */
final class Wedges {
  private Wedges() {}

  /** 4 m long, 1.2 m broad, its chine so much higher than its keel. */
  static HullMeasurements hull(double rise) {
    return hull(rise, 0.6);
  }

  /** Flat, 1.2 m broad amidships and 0.2 m at the transom. */
  static BoatModel pinched() {
    Boat boat =
        new Boat(
            "pinched",
            Water.FRESH,
            hull(0, 0.1),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            new Propulsion.Outboard(1500),
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            Optional.empty(),
            List.of());
    return BoatModel.of(boat, LocalDate.of(2026, 11, 25));
  }

  private static HullMeasurements hull(double rise, double transom) {
    return new HullMeasurements(
        60,
        Optional.empty(),
        Optional.empty(),
        750,
        0.006,
        rise + 0.02,
        List.of(
            station("transom", 0, transom, rise),
            station("middle", 2, 0.6, rise),
            station("bow", 4, 0.6, rise)),
        List.of());
  }

  private static Station station(String name, double x, double half, double rise) {
    return Station.mirrored(
        name,
        List.of(Vector3.of(x, 0, 0), Vector3.of(x, half, rise), Vector3.of(x, half, rise + 0.4)));
  }
}
