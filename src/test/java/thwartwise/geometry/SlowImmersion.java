package thwartwise.geometry;

import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Adds up the immersed parts of any number of solids under one plane. Not thread-safe; made once
 * for a solve and reused, so that nothing is allocated for a triangle.
 *
 * <p>Method: volume and its moments are summed in tetrahedra that stand on the wetted triangles,
 * their common apex the point of the plane under the boat's origin. The waterplane, which closes
 * the immersed part, passes through the apex and adds nothing, so no cap is built. The corner that
 * the water cuts off a triangle lies in the triangle's own plane: its tetrahedron is the whole one
 * times the share of the area, α β. The waterplane's area and moments go round its outline (Green's
 * theorem), of which every crossed triangle gives one edge. All of it is exact for plane triangles,
 * and a face or a vertex in the plane is no special case: a face lying in the plane is taken as
 * dry.
 */
public final class SlowImmersion {
  private final Map<Solid, SlowFacets> known = new IdentityHashMap<>();
  private WaterPlane plane = new WaterPlane(Vector3.of(0, 0, 1), 0);
  private Vector3 ahead = Vector3.of(1, 0, 0);
  private Vector3 athwart = Vector3.of(0, 1, 0);
  private Vector3 apex = Vector3.ZERO;
  private double[] u = new double[0];
  private double[] v = new double[0];
  private double[] s = new double[0];
  private int[] crossed = new int[0];
  private int crossings;
  private double volume;
  private double momentU;
  private double momentV;
  private double momentS;
  private double area;
  private double areaU;
  private double areaV;
  private double areaUU;
  private double areaUV;
  private double areaVV;
  private double weight;

  /** Starts again under another plane. */
  public SlowImmersion at(WaterPlane newPlane) {
    plane = newPlane;
    athwart = newPlane.athwart();
    ahead = athwart.cross(newPlane.up());
    apex = newPlane.up().times(newPlane.height());
    volume = momentU = momentV = momentS = 0;
    area = areaU = areaV = areaUU = areaUV = areaVV = 0;
    return this;
  }

  /** Adds the immersed part of a solid, counted by a factor (negative takes it away). */
  public SlowImmersion add(Solid solid, double factor) {
    Span reach = solid.bounds().extent(plane.up());
    if (reach.from() >= plane.height() || factor == 0) {
      return this;
    }
    if (reach.to() <= plane.height()) {
      addWhole(solid, factor);
      return this;
    }
    weight = factor;
    SlowFacets facets =
        known.computeIfAbsent(solid, any -> SlowFacets.of(solid.xyz, solid.corners));
    turn(facets);
    wetted(solid.corners, facets.cones);
    crossed(solid.corners, facets.cones);
    return this;
  }

  public ImmersedPart part() {
    return new ImmersedPart(
        plane, volume, momentU, momentV, momentS, area, areaU, areaV, areaUU, areaUV, areaVV);
  }

  private void addWhole(Solid solid, double factor) {
    volume += factor * solid.volume();
    momentU += factor * ahead.dot(solid.moment());
    momentV += factor * athwart.dot(solid.moment());
    momentS += factor * (plane.up().dot(solid.moment()) - plane.height() * solid.volume());
  }

  /** Vertices into the water's axes, once each: triangles share them. */
  private void turn(SlowFacets facets) {
    makeRoom(facets);
    along(ahead, facets, 0, u);
    along(athwart, facets, 0, v);
    along(plane.up(), facets, plane.height(), s);
  }

  private void makeRoom(SlowFacets facets) {
    if (s.length < facets.x.length) {
      u = new double[facets.x.length];
      v = new double[facets.x.length];
      s = new double[facets.x.length];
    }
    if (crossed.length < facets.cones.length / 4) {
      crossed = new int[facets.cones.length / 4];
    }
  }

  // One plain row at a time, so that the compiler can take several vertices in one instruction.
  private static void along(Vector3 axis, SlowFacets facets, double less, double[] row) {
    double[] x = facets.x;
    double[] y = facets.y;
    double[] z = facets.z;
    double byX = axis.x();
    double byY = axis.y();
    double byZ = axis.z();
    for (int i = 0; i < x.length; i++) {
      row[i] = byX * x[i] + byY * y[i] + byZ * z[i] - less;
    }
  }

  // Both loops keep their sums in variables of their own: in fields, each triangle would wait for
  // the one before. Two loops, because together their variables outnumber the registers.
  private void wetted(int[] corners, double[] cones) {
    double apexX = apex.x();
    double apexY = apex.y();
    double apexZ = apex.z();
    double[] u = this.u;
    double[] v = this.v;
    double[] s = this.s;
    int[] listed = crossed;
    int count = 0;
    double sum = 0;
    double sumU = 0;
    double sumV = 0;
    double sumS = 0;
    for (int t = 0, f = 0; t < corners.length; t += 3, f += 4) {
      int a = corners[t];
      int b = corners[t + 1];
      int c = corners[t + 2];
      boolean wetA = s[a] < 0;
      boolean wetB = s[b] < 0;
      boolean wetC = s[c] < 0;
      if (wetA && wetB && wetC) {
        double cone = cones[f] - apexX * cones[f + 1] - apexY * cones[f + 2] - apexZ * cones[f + 3];
        sum += cone;
        sumU += cone * (u[a] + u[b] + u[c]);
        sumV += cone * (v[a] + v[b] + v[c]);
        sumS += cone * (s[a] + s[b] + s[c]);
      } else if (wetA || wetB || wetC) {
        listed[count++] = t;
      }
    }
    crossings = count;
    addVolume(sum, sumU, sumV, sumS);
  }

  /** Of each crossed triangle the tip that is alone in being wet, or the whole less a dry tip. */
  private void crossed(int[] corners, double[] cones) {
    double apexX = apex.x();
    double apexY = apex.y();
    double apexZ = apex.z();
    double[] u = this.u;
    double[] v = this.v;
    double[] s = this.s;
    int[] listed = crossed;
    int count = crossings;
    double sum = 0;
    double sumU = 0;
    double sumV = 0;
    double sumS = 0;
    double flat = 0;
    double flatU = 0;
    double flatV = 0;
    double flatUU = 0;
    double flatUV = 0;
    double flatVV = 0;
    for (int i = 0; i < count; i++) {
      int t = listed[i];
      int a = corners[t];
      int b = corners[t + 1];
      int c = corners[t + 2];
      // The corner that is alone on its side of the water comes first.
      boolean wetA = s[a] < 0;
      if (wetA == s[c] < 0) {
        int last = a;
        a = b;
        b = c;
        c = last;
      } else if (wetA == s[b] < 0) {
        int first = c;
        c = b;
        b = a;
        a = first;
      }
      double sa = s[a];
      double ua = u[a];
      double va = v[a];
      double alpha = sa / (sa - s[b]);
      double beta = sa / (sa - s[c]);
      double up = ua + alpha * (u[b] - ua);
      double vp = va + alpha * (v[b] - va);
      double uq = ua + beta * (u[c] - ua);
      double vq = va + beta * (v[c] - va);
      int f = t / 3 * 4;
      double cone = cones[f] - apexX * cones[f + 1] - apexY * cones[f + 2] - apexZ * cones[f + 3];
      double tip = alpha * beta * cone;
      double turn = uq * vp - up * vq;
      if (!(sa < 0)) {
        sum += cone;
        sumU += cone * (ua + u[b] + u[c]);
        sumV += cone * (va + v[b] + v[c]);
        sumS += cone * (sa + s[b] + s[c]);
        tip = -tip;
        turn = -turn;
      }
      double uu = up + uq;
      double vv = vp + vq;
      sum += tip;
      sumU += tip * (ua + uu);
      sumV += tip * (va + vv);
      sumS += tip * sa;
      flat += turn;
      flatU += turn * uu;
      flatV += turn * vv;
      flatUU += turn * (uu * uu - up * uq);
      flatUV += turn * (uu * vv + up * vp + uq * vq);
      flatVV += turn * (vv * vv - vp * vq);
    }
    addVolume(sum, sumU, sumV, sumS);
    addWaterplane(flat, flatU, flatV, flatUU, flatUV, flatVV);
  }

  /** Tetrahedra's volumes, and those times the sum of their three corners off the apex. */
  private void addVolume(double sum, double sumU, double sumV, double sumS) {
    volume += weight * sum;
    momentU += weight * sumU / 4;
    momentV += weight * sumV / 4;
    momentS += weight * sumS / 4;
  }

  /**
   * Round the outline, of each edge from (u₀, v₀) to (u₁, v₁) the turn u₀ v₁ − u₁ v₀ and its
   * products; in the signs of an outline that has the waterplane on its left.
   */
  private void addWaterplane(double turn, double u, double v, double uu, double uv, double vv) {
    area += weight * turn / 2;
    areaU += weight * u / 6;
    areaV += weight * v / 6;
    areaUU += weight * uu / 12;
    areaUV += weight * uv / 24;
    areaVV += weight * vv / 12;
  }
}
