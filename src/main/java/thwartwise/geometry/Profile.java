package thwartwise.geometry;

import java.util.List;

/**
 * What of a solid is seen from one side: area, m², and centre of that area.
 *
 * <p>Adds up the faces turned toward the eye, so a face hidden behind another counts too: exact for
 * shapes without hollows seen from that side, as the outside of a hull is.
 *
 * @param centre mean of the seen faces, weighed by their seen area
 */
public record Profile(double area, Vector3 centre) {

  /**
   * @param toward unit vector from the solid to the eye
   */
  public static Profile of(Solid solid, Vector3 toward) {
    double area = 0;
    Vector3 first = Vector3.ZERO;
    for (int i = 0; i < solid.triangleCount(); i++) {
      List<Vector3> t = solid.triangle(i);
      Vector3 doubled = t.get(1).minus(t.get(0)).cross(t.get(2).minus(t.get(0)));
      double seen = doubled.dot(toward) / 2;
      if (seen > 0) {
        area += seen;
        first = first.plus(t.get(0).plus(t.get(1)).plus(t.get(2)).times(seen / 3));
      }
    }
    return new Profile(area, area > 0 ? first.times(1 / area) : Vector3.ZERO);
  }
}
