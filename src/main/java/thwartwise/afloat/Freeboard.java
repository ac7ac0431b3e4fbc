package thwartwise.afloat;

import java.util.List;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/**
 * The lowest edge above the water, measured perpendicular to the surface.
 *
 * @param height m; negative when it is under
 * @param at the name of the edge
 */
public record Freeboard(double height, String at) {

  /** The least over all edges; a boat that cannot flood has infinite freeboard. */
  public static Freeboard least(List<FloodPoint> edges, WaterPlane plane) {
    double least = Double.POSITIVE_INFINITY;
    String at = "";
    for (FloodPoint edge : edges) {
      double height = plane.above(edge.at());
      if (height < least) {
        least = height;
        at = edge.name();
      }
    }
    return new Freeboard(least, at);
  }
}
