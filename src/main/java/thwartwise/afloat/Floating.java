package thwartwise.afloat;

import java.util.List;
import thwartwise.boat.Loading;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * What an equilibrium is found for: a mass with its centre, what lifts it, and the water.
 *
 * @param mass kg
 * @param centre of gravity
 * @param density of the water, kg/m³
 */
public record Floating(double mass, Vector3 centre, List<Lift> lifts, double density) {

  public Floating {
    lifts = List.copyOf(lifts);
  }

  /** The boat dry inside: what lifts it is its outside up to a lid at the rail. */
  public static Floating dry(Loading loading) {
    return new Floating(
        loading.mass(),
        loading.centre(),
        List.of(new Lift(loading.craft().form().outside(), 1)),
        loading.craft().waterDensity());
  }

  /** Volume of water as heavy as this, m³. */
  public double neededVolume() {
    return mass / density;
  }

  /** All that lifts, fully under, m³. */
  public double liftVolume() {
    return lifts.stream().mapToDouble(Lift::volume).sum();
  }

  ImmersedPart immersed(Immersion immersion, WaterPlane plane) {
    immersion.at(plane);
    for (Lift lift : lifts) {
      immersion.add(lift.solid(), lift.factor());
    }
    return immersion.part();
  }

  /** From where nothing is wet to where all is, along a direction. */
  Span extent(Vector3 up) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Lift lift : lifts) {
      if (lift.solid().triangleCount() > 0) {
        Span reach = lift.solid().extent(up);
        from = Math.min(from, reach.from());
        to = Math.max(to, reach.to());
      }
    }
    return new Span(from, to);
  }
}
