package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Span;
import thwartwise.hull.HullForm;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.hull.UnusableBoat;
import thwartwise.measure.Dimension;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.PlausibleRange;
import thwartwise.walk.engine.Tape;
import thwartwise.walk.engine.Warning;

/** What is unlikely about the mass of a bare hull, given the skin that its stations make. */
public record SkinWarnings(
    Tape tape,
    PlausibleLimits limits,
    List<Station> stations,
    double thickness,
    double density,
    Optional<Material> material) {

  public static SkinWarnings of(Tape tape, PlausibleLimits limits, HullMeasurements hull) {
    return new SkinWarnings(
        tape, limits, hull.stations(), hull.thickness(), hull.density(), hull.material());
  }

  public Optional<Warning> of(double mass) {
    return area().flatMap(area -> of(mass, area));
  }

  private Optional<Warning> of(double mass, double area) {
    Span usual = limits.hullMass(area, thickness, density, material);
    if (usual.contains(mass)) {
      return Optional.empty();
    }
    Optional<Double> meant =
        tape.otherMass(mass).filter(usual::contains).or(() -> tenTimes(mass, usual));
    String offer = meant.map(kg -> " Did you mean " + show(kg) + "?").orElse(" Weigh it again.");
    return Optional.of(
        new Warning(
            "%s is %s: its skin alone, %.1f m2, comes to about %s.%s"
                .formatted(
                    show(mass),
                    mass < usual.from()
                        ? "too light for such a hull"
                        : "very heavy for such a hull",
                    area,
                    show(area * thickness * density),
                    offer),
            meant.map(kg -> PlausibleRange.plain(kg) + " kg"),
            true));
  }

  private static Optional<Double> tenTimes(double mass, Span usual) {
    return Optional.of(mass < usual.from() ? 10 * mass : mass / 10).filter(usual::contains);
  }

  private String show(double mass) {
    return tape.system().show(mass, Dimension.MASS);
  }

  /** Nothing where the stations do not close into a hull; that is told when the boat is built. */
  private Optional<Double> area() {
    try {
      HullMeasurements hull =
          new HullMeasurements(
              1, Optional.empty(), Optional.empty(), density, thickness, 0, stations, List.of());
      return Optional.of(HullForm.of(hull).shellArea());
    } catch (UnusableBoat e) {
      return Optional.empty();
    }
  }
}
