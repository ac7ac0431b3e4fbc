package thwartwise.benchmark;

import java.util.List;
import java.util.Optional;
import thwartwise.afloat.FloatingBody;
import thwartwise.afloat.Lift;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/**
 * A square-ended punt with 300 kg a little to one side. Its bottom stays wet from end to end but
 * for the swept-up ends, so that sums over sections converge soon: with the pieces named here to
 * 5e-7 and with twice as many to 6e-8 (a boat whose forefoot leaves the water needs ten times the
 * sections).
 */
final class LoadedPunt {
  static final int PIECES = 2;

  private LoadedPunt() {}

  static Solid outside() {
    List<Station> stations =
        List.of(
            station("aft", 0, 0.58, 0.65, 0.12, 0.50),
            station("quarter", 0.9, 0.65, 0.74, 0, 0.48),
            station("middle", 2.2, 0.65, 0.75, 0, 0.48),
            station("shoulder", 3.3, 0.65, 0.75, 0, 0.48),
            station("fore", 4.3, 0.52, 0.60, 0.14, 0.52));
    return HullForm.of(
            new HullMeasurements(
                85, Optional.empty(), Optional.empty(), 750, 0.006, 0.02, stations, List.of()))
        .outside();
  }

  static FloatingBody dry() {
    return new FloatingBody(300, Vector3.of(2.1, 0.04, 0.3), List.of(new Lift(outside(), 1)), 1000);
  }

  private static Station station(
      String name, double x, double bottom, double rail, double rise, double height) {
    return Station.mirrored(
        name,
        List.of(Vector3.of(x, 0, rise), Vector3.of(x, bottom, rise), Vector3.of(x, rail, height)));
  }
}
