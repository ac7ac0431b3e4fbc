package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;
import thwartwise.geometry.Solid;
import thwartwise.geometry.SolidBuilder;
import thwartwise.geometry.Vector3;

/**
 * Builds the skin over a row of sections: straight panels between neighbouring lines, a panel at
 * each end, a lid from rail to rail. Port and starboard panels are split along mirrored diagonals,
 * and those from side to side along the shorter one, so a mirrored hull gives the mirrored solid.
 */
final class Loft {
  private final List<Section> sections;
  private final SolidBuilder builder = new SolidBuilder();
  private final List<Vector3> corners = new ArrayList<>();
  private final List<int[]> port = new ArrayList<>();
  private final List<int[]> starboard = new ArrayList<>();

  private Loft(List<Section> sections) {
    this.sections = sections;
    for (Section s : sections) {
      port.add(s.port().stream().mapToInt(this::corner).toArray());
      starboard.add(s.starboard().stream().mapToInt(this::corner).toArray());
    }
  }

  private int corner(Vector3 p) {
    corners.add(p);
    return builder.vertex(p);
  }

  /** The closed solid. */
  static Solid closed(List<Section> sections) {
    Loft loft = new Loft(sections);
    loft.skin();
    loft.lid();
    return loft.builder.build();
  }

  /** Bottom, sides and end panels only, which are what the hull is built of; open at the top. */
  static Solid withoutLid(List<Section> sections) {
    Loft loft = new Loft(sections);
    loft.skin();
    return loft.builder.build();
  }

  private void skin() {
    int lines = sections.get(0).size();
    for (int j = 0; j + 1 < sections.size(); j++) {
      for (int k = 0; k + 1 < lines; k++) {
        quad(port.get(j)[k], port.get(j)[k + 1], port.get(j + 1)[k + 1], port.get(j + 1)[k]);
        mirroredQuad(
            starboard.get(j)[k],
            starboard.get(j)[k + 1],
            starboard.get(j + 1)[k + 1],
            starboard.get(j + 1)[k]);
      }
    }
    end(0, true);
    end(sections.size() - 1, false);
  }

  private void end(int j, boolean aft) {
    for (int k = 0; k + 1 < sections.get(j).size(); k++) {
      int a = starboard.get(j)[k];
      int b = port.get(j)[k];
      int c = port.get(j)[k + 1];
      int d = starboard.get(j)[k + 1];
      if (aft) {
        across(a, d, c, b);
      } else {
        across(a, b, c, d);
      }
    }
  }

  private void lid() {
    int rail = sections.get(0).size() - 1;
    for (int j = 0; j + 1 < sections.size(); j++) {
      across(
          starboard.get(j)[rail],
          starboard.get(j + 1)[rail],
          port.get(j + 1)[rail],
          port.get(j)[rail]);
    }
  }

  /** If the sides differ such a panel is twisted, and the choice of the diagonal matters. */
  private void across(int a, int b, int c, int d) {
    if (distance(b, d) < distance(a, c)) {
      quad(b, c, d, a);
    } else {
      quad(a, b, c, d);
    }
  }

  private double distance(int a, int b) {
    return corners.get(a).minus(corners.get(b)).norm();
  }

  private void quad(int a, int b, int c, int d) {
    builder.triangle(a, b, c);
    builder.triangle(a, c, d);
  }

  /** The mirror image of {@link #quad}: same diagonal, opposite direction. */
  private void mirroredQuad(int a, int b, int c, int d) {
    builder.triangle(a, c, b);
    builder.triangle(a, d, c);
  }

  /** The area of a skin and its centre, for distributing the hull's mass over it. */
  static AreaCentre areaOf(Solid skin) {
    double area = 0;
    Vector3 first = Vector3.ZERO;
    for (int i = 0; i < skin.triangleCount(); i++) {
      List<Vector3> t = skin.triangle(i);
      double a = t.get(1).minus(t.get(0)).cross(t.get(2).minus(t.get(0))).norm() / 2;
      area += a;
      first = first.plus(t.get(0).plus(t.get(1)).plus(t.get(2)).times(a / 3));
    }
    return new AreaCentre(area, first.times(1 / area));
  }

  record AreaCentre(double area, Vector3 centre) {}
}
