package thwartwise.geometry;

/**
 * Adds up the immersed parts of any number of solids under one plane. Not thread-safe; made once
 * for a solve by the thread that uses it, so that nothing is allocated for a triangle.
 *
 * <p>Method: volume and its moments are summed in tetrahedra that stand on the wetted triangles and
 * on the waterplane, their common apex the boat's origin. Those on wholly wet triangles never
 * change, and {@link WettedTriangles} carries their sum from one plane to the next. The tip that
 * the water cuts off a triangle lies in the triangle's own plane: its tetrahedron is the whole one
 * times the share of the area, α β. The waterplane's area and moments go round its outline (Green's
 * theorem), of which every crossed triangle gives one edge; they give the pyramid on the waterplane
 * too, so no cap is built. All of it is exact for plane triangles, and a face or a vertex in the
 * plane is no special case: a face lying in the plane is taken as dry.
 */
public final class Immersion {
  private WaterPlane plane = new WaterPlane(Vector3.of(0, 0, 1), 0);
  private Vector3 ahead = Vector3.of(1, 0, 0);
  private Vector3 athwart = Vector3.of(0, 1, 0);

  private final WorkingRows rows = WorkingRows.OF_THREAD.get();

  // Sums on whole triangles, along the boat's axes, and on tips, along the water's.
  private double whole;
  private double wholeX;
  private double wholeY;
  private double wholeZ;
  private double tips;
  private double tipsU;
  private double tipsV;
  private double tipsS;
  private double area;
  private double areaU;
  private double areaV;
  private double areaUU;
  private double areaUV;
  private double areaVV;
  private double weight;

  /** Starts again under another plane. */
  public Immersion at(WaterPlane newPlane) {
    plane = newPlane;
    athwart = newPlane.athwart();
    ahead = athwart.cross(newPlane.up());
    whole = wholeX = wholeY = wholeZ = 0;
    tips = tipsU = tipsV = tipsS = 0;
    area = areaU = areaV = areaUU = areaUV = areaVV = 0;
    return this;
  }

  /** Adds the immersed part of a solid, counted by a factor (negative takes it away). */
  public Immersion add(Solid solid, double factor) {
    Bounds bounds = solid.bounds();
    double over = bounds.centre().dot(plane.up()) - plane.height();
    double reach = bounds.reach(plane.up());
    if (over >= reach || factor == 0) {
      return this;
    }
    weight = factor;
    if (over <= -reach) {
      Vector3 moment = solid.moment();
      addWhole(solid.volume(), moment.x(), moment.y(), moment.z());
      return this;
    }
    Facets facets = solid.facets();
    turn(facets);
    WettedTriangles triangles = rows.wetted(facets);
    addWhole(triangles.volume(), triangles.momentX(), triangles.momentY(), triangles.momentZ());
    crossed(facets, triangles);
    return this;
  }

  public ImmersedPart part() {
    Vector3 moment = Vector3.of(wholeX, wholeY, wholeZ);
    double height = plane.height();
    double volume = whole + tips + height * area / 3;
    double aboveOrigin =
        plane.up().dot(moment) + (tipsS + 3 * height * tips + height * height * area) / 4;
    return new ImmersedPart(
        plane,
        volume,
        ahead.dot(moment) + (tipsU + height * areaU) / 4,
        athwart.dot(moment) + (tipsV + height * areaV) / 4,
        aboveOrigin - height * volume,
        area,
        areaU,
        areaV,
        areaUU,
        areaUV,
        areaVV);
  }

  private void addWhole(double volume, double momentX, double momentY, double momentZ) {
    whole += weight * volume;
    wholeX += weight * momentX;
    wholeY += weight * momentY;
    wholeZ += weight * momentZ;
  }

  /** Vertices into the water's axes, once each: triangles share them. */
  private void turn(Facets facets) {
    rows.makeRoom(facets);
    along(ahead, facets, 0, rows.u);
    along(athwart, facets, 0, rows.v);
    along(plane.up(), facets, plane.height(), rows.s);
  }

  // Adding zero last turns a negative zero into a positive one: in the plane is dry, and the sign
  // alone tells wet from dry.
  // One plain row at a time, so that the compiler can take several vertices in one instruction.
  private static void along(Vector3 axis, Facets facets, double less, double[] row) {
    double[] x = facets.x;
    double[] y = facets.y;
    double[] z = facets.z;
    double byX = axis.x();
    double byY = axis.y();
    double byZ = axis.z();
    for (int i = 0; i < x.length; i++) {
      row[i] = byX * x[i] + byY * y[i] + byZ * z[i] - less + 0.0;
    }
  }

  /**
   * Adds, for each crossed triangle, the tip that is alone on its side: a wet one, or less a dry
   * one; the sign is that of its height. Sums are kept in variables of their own: in fields, each
   * triangle would wait for the one before. The outline has a loop of its own, because together
   * their variables outnumber the registers.
   */
  private void crossed(Facets facets, WettedTriangles triangles) {
    double[] cones = facets.cones;
    int[] aloneFirst = triangles.aloneFirst;
    long[] words = triangles.crossed;
    double[] u = rows.u;
    double[] v = rows.v;
    double[] s = rows.s;
    double sum = 0;
    double sumU = 0;
    double sumV = 0;
    double sumS = 0;
    double[] outline = rows.outline;
    int used = 0;
    for (int i = 0; i < words.length; i++) {
      for (long left = words[i]; left != 0; left &= left - 1) {
        int triangle = 64 * i + Long.numberOfTrailingZeros(left);
        int a = aloneFirst[3 * triangle];
        int b = aloneFirst[3 * triangle + 1];
        int c = aloneFirst[3 * triangle + 2];
        double sa = s[a];
        double ua = u[a];
        double va = v[a];
        double toB = sa - s[b];
        double toC = sa - s[c];
        double share = sa / (toB * toC);
        double alpha = share * toC;
        double beta = share * toB;
        double up = ua + alpha * (u[b] - ua);
        double vp = va + alpha * (v[b] - va);
        double uq = ua + beta * (u[c] - ua);
        double vq = va + beta * (v[c] - va);
        // α β of the cone, negative where the tip is wet.
        double tip = share * Math.abs(sa) * cones[triangle];
        sum += tip;
        sumU += tip * (ua + up + uq);
        sumV += tip * (va + vp + vq);
        sumS += tip * sa;
        outline[used] = up;
        outline[used + 1] = vp;
        outline[used + 2] = uq;
        outline[used + 3] = vq;
        used += 4;
      }
    }
    tips -= weight * sum;
    tipsU -= weight * sumU;
    tipsV -= weight * sumV;
    tipsS -= weight * sumS;
    addWaterplane(outline, used);
  }

  /**
   * Goes round the outline, adding of each edge from (u₀, v₀) to (u₁, v₁) the turn u₁ v₀ − u₀ v₁
   * and its products.
   *
   * @param edges their ends; the waterplane lies on their right
   * @param used the length of that row
   */
  private void addWaterplane(double[] edges, int used) {
    double flat = 0;
    double flatU = 0;
    double flatV = 0;
    double flatUU = 0;
    double flatUV = 0;
    double flatVV = 0;
    for (int i = 0; i < used; i += 4) {
      double up = edges[i];
      double vp = edges[i + 1];
      double uq = edges[i + 2];
      double vq = edges[i + 3];
      double turn = uq * vp - up * vq;
      double uu = up + uq;
      double vv = vp + vq;
      double turnU = turn * uu;
      double turnV = turn * vv;
      flat += turn;
      flatU += turnU;
      flatV += turnV;
      flatUU += turnU * uu - turn * (up * uq);
      flatUV += turnU * vv + turn * (up * vp + uq * vq);
      flatVV += turnV * vv - turn * (vp * vq);
    }
    area += weight * flat / 2;
    areaU += weight * flatU / 6;
    areaV += weight * flatV / 6;
    areaUU += weight * flatUU / 12;
    areaUV += weight * flatUV / 24;
    areaVV += weight * flatVV / 12;
  }
}
