package thwartwise.loadcase;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.EquilibriumUnderForces.Force;
import thwartwise.afloat.Pool;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;
import thwartwise.boat.Side;

/**
 * A change to a loading, as data: the people after it, weights added (negative: removed), forces,
 * water in chambers, and the side to which loose kit has slid. Every act is one of these; the
 * equilibrium search is the same for all.
 *
 * @param deeds what is done, in order
 * @param kitSide the side on which loose kit lies: 1 port, −1 starboard, 0 where it is listed
 */
public record Disturbance(
    List<LoadCaseStep> deeds,
    List<Body> people,
    List<Loading.Weight> weights,
    List<Force> forces,
    List<Pool> pools,
    double kitSide) {

  public Disturbance {
    deeds = List.copyOf(deeds);
    people = List.copyOf(people);
    weights = List.copyOf(weights);
    forces = List.copyOf(forces);
    pools = List.copyOf(pools);
  }

  private Disturbance(
      LoadCaseStep deed, List<Body> people, List<Loading.Weight> weights, List<Force> forces) {
    this(List.of(deed), people, weights, forces, List.of(), 0);
  }

  /** Only the people; nothing else changes. */
  static Disturbance none(List<Body> people) {
    return new Disturbance(List.of(), people, List.of(), List.of(), List.of(), 0);
  }

  /** People move. */
  public static Disturbance moved(LoadCaseStep deed, List<Body> people) {
    return new Disturbance(deed, people, List.of(), List.of());
  }

  /** Everybody stays; weights come aboard or go. */
  public static Disturbance weighed(
      LoadCaseStep deed, List<Body> people, List<Loading.Weight> weights) {
    return new Disturbance(deed, people, weights, List.of());
  }

  /** Everybody stays; forces act. */
  public static Disturbance withForces(LoadCaseStep deed, List<Body> people, List<Force> forces) {
    return new Disturbance(deed, people, List.of(), forces);
  }

  /** Everybody stays; water stands in a chamber. */
  public static Disturbance holed(LoadCaseStep deed, List<Body> people, Pool water) {
    return new Disturbance(List.of(deed), people, List.of(), List.of(), List.of(water), 0);
  }

  /** A copy with one more weight. */
  Disturbance and(Loading.Weight weight) {
    return new Disturbance(deeds, people, joined(weights, List.of(weight)), forces, pools, kitSide);
  }

  /** A copy with loose kit on one side. */
  Disturbance withKitAt(double side) {
    return new Disturbance(deeds, people, weights, forces, pools, side);
  }

  Disturbance withPeople(List<Body> others) {
    return new Disturbance(deeds, others, weights, forces, pools, kitSide);
  }

  /** The same to a side. */
  Disturbance toward(Side side) {
    return called(deeds.stream().map(d -> d.to(side)).toList());
  }

  Disturbance called(List<LoadCaseStep> otherwise) {
    return new Disturbance(otherwise, people, weights, forces, pools, kitSide);
  }

  /** This change followed by another: the people of the second, and everything added by both. */
  Disturbance andThen(Disturbance next) {
    return new Disturbance(
        joined(deeds, next.deeds),
        next.people,
        joined(weights, next.weights),
        joined(forces, next.forces),
        joined(pools, next.pools),
        next.kitSide != 0 ? next.kitSide : kitSide);
  }

  private static <T> List<T> joined(List<T> before, List<T> more) {
    return Stream.concat(before.stream(), more.stream()).toList();
  }
}
