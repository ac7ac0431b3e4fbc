package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import thwartwise.afloat.Force;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;

/**
 * Something done to a loading, as data: the people as they are then, weights added (negative: taken
 * away), and what pulls at the boat. Whatever is done to a boat is one of these; the equilibrium
 * behind it is always the same.
 *
 * @param how in words, as they follow the loading
 */
record Disturbance(
    String how, List<Body> people, List<Loading.Weight> weights, List<Force> forces) {

  Disturbance {
    people = List.copyOf(people);
    weights = List.copyOf(weights);
    forces = List.copyOf(forces);
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

  /** With another weight besides. */
  Disturbance and(Loading.Weight weight) {
    List<Loading.Weight> all = new ArrayList<>(weights);
    all.add(weight);
    return new Disturbance(how, people, all, forces);
  }
}
