package thwartwise.afloat;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.Loading;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;

/**
 * The body whose equilibrium is sought: a mass with its centre, what lifts it, the water it floats
 * in, the loose water in it, and the forces on it.
 *
 * @param mass of everything that stays in its place, kg
 * @param centre of gravity of that mass
 * @param density of the water, kg/m³
 * @param pools water inside that finds its own level; its weight is added to the mass
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

  /** A body without loose water and without forces. */
  public FloatingBody(double mass, Vector3 centre, List<Lift> lifts, double density) {
    this(mass, centre, lifts, density, List.of(), List.of());
  }

  /** The boat dry inside: its lift is its outside up to a lid at the rail, and a skeg. */
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

  /** The volume of water with the mass of everything that stays in its place, m³. */
  double fixedVolume() {
    return mass / density;
  }

  /** The volume of water with the total mass, loose water included, m³. */
  public double neededVolume() {
    double volume = fixedVolume();
    for (Pool pool : pools) {
      volume += pool.volume();
    }
    return volume;
  }

  /** The total mass, loose water included, kg. */
  public double totalMass() {
    return density * neededVolume();
  }

  /** The volume of everything that lifts, fully under water, m³. */
  public double liftVolume() {
    return Lift.volume(lifts);
  }

  Span extent(Vector3 up) {
    return Lift.extent(lifts, up);
  }
}
