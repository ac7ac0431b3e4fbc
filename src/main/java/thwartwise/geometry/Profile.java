package thwartwise.geometry;

/**
 * The view of a solid from one side: area, m², and centre of that area.
 *
 * <p>It adds the faces turned toward the eye, so a face hidden behind another counts too: exact for
 * shapes without hollows seen from that side, such as the outside of a hull.
 *
 * @param centre mean of the seen faces, weighted by their seen area
 */
public record Profile(double area, Vector3 centre) {

  /**
   * @param toward unit vector from the solid to the eye
   */
  public static Profile of(Solid solid, Vector3 toward) {
    double area = 0;
    Vector3 first = Vector3.ZERO;
    for (int t = 0; t < solid.corners.length; t += 3) {
      Vector3 a = solid.vertex(solid.corners[t]);
      Vector3 b = solid.vertex(solid.corners[t + 1]);
      Vector3 c = solid.vertex(solid.corners[t + 2]);
      double seen = b.minus(a).cross(c.minus(a)).dot(toward) / 2;
      if (seen > 0) {
        area += seen;
        first = first.plus(a.plus(b).plus(c).times(seen / 3));
      }
    }
    return new Profile(area, area > 0 ? first.times(1 / area) : Vector3.ZERO);
  }
}
