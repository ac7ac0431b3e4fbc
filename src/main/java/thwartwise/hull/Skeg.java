package thwartwise.hull;

import java.util.List;
import thwartwise.geometry.Vector3;

/**
 * A fin under the keel, as it was measured.
 *
 * @param edge its lower edge on the middle line, aft to forward, at least two points
 * @param thickness across, m
 */
public record Skeg(List<Vector3> edge, double thickness) {

  public Skeg {
    edge = List.copyOf(edge);
  }
}
