package thwartwise.boat;

import java.util.List;
import thwartwise.geometry.Vector3;

/**
 * A place other than the rail where water comes in: its lowest edge.
 *
 * @param middle middle of that edge
 * @param width length of that edge, m
 * @param athwart true when the edge runs across the boat, false when it runs along it
 */
public record Opening(String name, Vector3 middle, double width, boolean athwart) {

  /** Both ends of the edge: a wide opening floods at the lower one. */
  public List<Vector3> ends() {
    Vector3 half = athwart ? Vector3.of(0, width / 2, 0) : Vector3.of(width / 2, 0, 0);
    return List.of(middle.minus(half), middle.plus(half));
  }
}
