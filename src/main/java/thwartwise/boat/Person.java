package thwartwise.boat;

import java.util.Optional;

/**
 * A person aboard, with clothes and life jacket.
 *
 * @param mass with both, kg
 * @param y to port, m
 * @param x along a place that has a length, m; left out, at its end farther from amidships
 */
public record Person(String name, double mass, String place, double y, Optional<Double> x) {

  public Person(String name, double mass, String place, double y) {
    this(name, mass, place, y, Optional.empty());
  }
}
