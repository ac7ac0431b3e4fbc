package thwartwise.checks;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.Force;
import thwartwise.afloat.Pool;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;

/**
 * Something done to a loading, as data: the people as they are then, weights added (negative: taken
 * away), what pulls at the boat, water in its chambers, and the side loose kit has slid to.
 * Whatever is done to a boat is one of these; the equilibrium behind it is always the same.
 *
 * @param how in words, as they follow the loading
 * @param kitSide the side on which loose kit lies: 1 port, −1 starboard, 0 where it is listed
 */
record Disturbance(
    String how,
    List<Body> people,
    List<Loading.Weight> weights,
    List<Force> forces,
    List<Pool> pools,
    double kitSide) {

  Disturbance {
    people = List.copyOf(people);
    weights = List.copyOf(weights);
    forces = List.copyOf(forces);
    pools = List.copyOf(pools);
  }

  private Disturbance(
      String how, List<Body> people, List<Loading.Weight> weights, List<Force> forces) {
    this(how, people, weights, forces, List.of(), 0);
  }

  /** People move. */
  static Disturbance moved(String how, List<Body> people) {
    return new Disturbance(how, people, List.of(), List.of());
  }

  /** Everybody stays; weights come aboard or go. */
  static Disturbance weighed(String how, List<Body> people, List<Loading.Weight> weights) {
    return new Disturbance(how, people, weights, List.of());
  }

  /** Everybody stays; something pulls. */
  static Disturbance pulled(String how, List<Body> people, List<Force> forces) {
    return new Disturbance(how, people, List.of(), forces);
  }

  /** Everybody stays; water stands in a chamber. */
  static Disturbance holed(String how, List<Body> people, Pool water) {
    return new Disturbance(how, people, List.of(), List.of(), List.of(water), 0);
  }

  /** With another weight besides. */
  Disturbance and(Loading.Weight weight) {
    return new Disturbance(how, people, joined(weights, List.of(weight)), forces, pools, kitSide);
  }

  /** The same with loose kit on one side. */
  Disturbance withKitAt(double side) {
    return new Disturbance(how, people, weights, forces, pools, side);
  }

  Disturbance withPeople(List<Body> others) {
    return new Disturbance(how, others, weights, forces, pools, kitSide);
  }

  Disturbance called(String otherwise) {
    return new Disturbance(otherwise, people, weights, forces, pools, kitSide);
  }

  /** Another one after this: its people, and all that was added before. */
  Disturbance then(Disturbance next) {
    return new Disturbance(
        how.isEmpty() ? next.how : how + "; " + next.how,
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
