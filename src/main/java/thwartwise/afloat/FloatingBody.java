package thwartwise.afloat;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.Loading;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;

/**
 * What an equilibrium is found for: a mass with its centre, what lifts it, the water it floats in,
 * the water that lies loose in it, and what pulls it.
 *
 * @param mass of all that stays in its place, kg
 * @param centre of gravity of that mass
 * @param density of the water, kg/m³
 * @param pools water inside that finds its own level; its weight comes on top of the mass
 * @param couples horizontal forces with their reactions
 */
public record FloatingBody(
    double mass,
    Vector3 centre,
    List<Lift> lifts,
    double density,
    List<Pool> pools,
    List<Couple> couples) {

  public FloatingBody {
    lifts = List.copyOf(lifts);
    pools = List.copyOf(pools);
    couples = List.copyOf(couples);
  }

  /** Without loose water and without forces. */
  public FloatingBody(double mass, Vector3 centre, List<Lift> lifts, double density) {
    this(mass, centre, lifts, density, List.of(), List.of());
  }

  /** The boat dry inside: what lifts it is its outside up to a lid at the rail, and a skeg. */
  public static FloatingBody dry(Loading loading) {
    HullForm form = loading.model().form();
    return new FloatingBody(
        loading.mass(),
        loading.centre(),
        Stream.of(form.outside(), form.skeg())
            .filter(s -> s.triangleCount() > 0)
            .map(s -> new Lift(s, 1))
            .toList(),
        loading.model().waterDensity());
  }

  public FloatingBody with(Pool pool) {
    return new FloatingBody(mass, centre, lifts, density, List.of(pool), couples);
  }

  public FloatingBody pulledBy(List<Couple> others) {
    return new FloatingBody(mass, centre, lifts, density, pools, others);
  }

  /** Volume of water as heavy as all that stays in its place, m³. */
  double fixedVolume() {
    return mass / density;
  }

  /** Volume of water as heavy as all of this, loose water included, m³. */
  public double neededVolume() {
    double volume = fixedVolume();
    for (Pool pool : pools) {
      volume += pool.volume();
    }
    return volume;
  }

  /** Mass of all of this, loose water included, kg. */
  public double totalMass() {
    return density * neededVolume();
  }

  /** All that lifts, fully under, m³. */
  public double liftVolume() {
    return Lift.volume(lifts);
  }

  Span extent(Vector3 up) {
    return Lift.extent(lifts, up);
  }
}
