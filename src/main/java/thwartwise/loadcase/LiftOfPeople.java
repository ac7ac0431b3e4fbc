package thwartwise.loadcase;

import java.util.stream.Stream;
import thwartwise.afloat.Equilibria;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;
import thwartwise.geometry.Box;
import thwartwise.geometry.Vector3;

/** What the people in a swamped boat lift at most, once they have moved across it. */
final class LiftOfPeople {
  /**
   * A swamped boat with its people moved across it lies no deeper than this (judgement; where a
   * body moves to where a chamber stands, some of its lift is lost), m.
   */
  private static final double DEEPER = 0.1;

  private LiftOfPeople() {}

  /**
   * The moment about the middle line of what they lift on one side, kg m, rounded up.
   *
   * @param side 1 for port and -1 for starboard
   * @param moved the boat with its people where they moved to
   * @param level the balances before they moved
   */
  static double momentToSide(double side, Loading moved, Equilibria level) {
    double moment = 0;
    for (Body body : moved.people()) {
      for (Box box : moved.model().boxes(body.withMass(body.mass() * moved.massFactor()))) {
        double out = Math.max(0, side * box.y().middle());
        moment += out * box.volume() * shareUnder(box, level);
      }
    }
    return moved.model().waterDensity() * moment;
  }

  private static double shareUnder(Box box, Equilibria level) {
    double y = box.y().middle();
    double deepest =
        Stream.of(y, -y)
            .map(at -> Vector3.of(box.x().middle(), at, box.z().from()))
            .flatMap(at -> level.reached().stream().map(pose -> -pose.above(at)))
            .mapToDouble(depth -> depth)
            .max()
            .orElseThrow();
    return Math.max(0, Math.min(1, (deepest + DEEPER) / box.z().length()));
  }
}
