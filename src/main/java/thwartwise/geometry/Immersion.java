package thwartwise.geometry;

/**
 * Adds up the immersed parts of any number of solids under one plane. Not thread-safe; made once
 * for a solve and reused, so that nothing is allocated for a triangle.
 *
 * <p>Method: a vertical column of water stands over every wetted triangle, so each integral over
 * the volume is an integral of s, us, vs or s² over the triangle's level projection, and each
 * integral over the waterplane is one of 1, u, v, u², uv, v² over the same projection (the
 * divergence theorem for fields that do not change along the vertical). All of them are exact for
 * plane triangles: ∫fg = w/12 (f_a g_a + f_b g_b + f_c g_c + (f_a+f_b+f_c)(g_a+g_b+g_c)), w the
 * signed projected area. No cap is built, so a face or a vertex in the plane is no special case. A
 * face lying in the plane is taken as dry.
 */
public final class Immersion {
  private WaterPlane plane = new WaterPlane(Vector3.of(0, 0, 1), 0);
  private Vector3 ahead = Vector3.of(1, 0, 0);
  private Vector3 athwart = Vector3.of(0, 1, 0);
  private double[] uvs = new double[0];
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
  public Immersion at(WaterPlane newPlane) {
    plane = newPlane;
    athwart = newPlane.athwart();
    ahead = athwart.cross(newPlane.up());
    volume = momentU = momentV = momentS = 0;
    area = areaU = areaV = areaUU = areaUV = areaVV = 0;
    return this;
  }

  /** Adds the immersed part of a solid, counted by a factor (negative takes it away). */
  public Immersion add(Solid solid, double factor) {
    Span reach = solid.bounds.extent(plane.up());
    if (reach.from() >= plane.height() || factor == 0) {
      return this;
    }
    if (reach.to() <= plane.height()) {
      addWhole(solid, factor);
      return this;
    }
    weight = factor;
    turn(solid.xyz);
    int[] corners = solid.corners;
    for (int t = 0; t < corners.length; t += 3) {
      triangle(3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]);
    }
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
  private void turn(double[] xyz) {
    if (uvs.length < xyz.length) {
      uvs = new double[xyz.length];
    }
    Vector3 up = plane.up();
    double height = plane.height();
    for (int i = 0; i < xyz.length; i += 3) {
      double x = xyz[i];
      double y = xyz[i + 1];
      double z = xyz[i + 2];
      uvs[i] = ahead.x() * x + ahead.y() * y + ahead.z() * z;
      uvs[i + 1] = athwart.y() * y + athwart.z() * z;
      uvs[i + 2] = up.x() * x + up.y() * y + up.z() * z - height;
    }
  }

  private void triangle(int a, int b, int c) {
    double sa = uvs[a + 2];
    double sb = uvs[b + 2];
    double sc = uvs[c + 2];
    int wet = (sa < 0 ? 1 : 0) + (sb < 0 ? 1 : 0) + (sc < 0 ? 1 : 0);
    if (wet == 3) {
      wetted(uvs[a], uvs[a + 1], sa, uvs[b], uvs[b + 1], sb, uvs[c], uvs[c + 1], sc);
    } else if (wet == 1) {
      if (sa < 0) {
        clipWetCorner(a, b, c);
      } else if (sb < 0) {
        clipWetCorner(b, c, a);
      } else {
        clipWetCorner(c, a, b);
      }
    } else if (wet == 2) {
      if (!(sc < 0)) {
        clipDryCorner(a, b, c);
      } else if (!(sa < 0)) {
        clipDryCorner(b, c, a);
      } else {
        clipDryCorner(c, a, b);
      }
    }
  }

  /** Only corner a is under water. */
  private void clipWetCorner(int a, int b, int c) {
    double p = fraction(a, b);
    double q = fraction(a, c);
    wetted(
        uvs[a],
        uvs[a + 1],
        uvs[a + 2],
        between(a, b, p),
        between(a + 1, b + 1, p),
        0,
        between(a, c, q),
        between(a + 1, c + 1, q),
        0);
  }

  /** Only corner c is dry. */
  private void clipDryCorner(int a, int b, int c) {
    double p = fraction(b, c);
    double q = fraction(a, c);
    double pu = between(b, c, p);
    double pv = between(b + 1, c + 1, p);
    wetted(uvs[a], uvs[a + 1], uvs[a + 2], uvs[b], uvs[b + 1], uvs[b + 2], pu, pv, 0);
    wetted(
        uvs[a], uvs[a + 1], uvs[a + 2], pu, pv, 0, between(a, c, q), between(a + 1, c + 1, q), 0);
  }

  private double fraction(int wet, int dry) {
    return uvs[wet + 2] / (uvs[wet + 2] - uvs[dry + 2]);
  }

  private double between(int from, int to, double t) {
    return uvs[from] + t * (uvs[to] - uvs[from]);
  }

  private void wetted(
      double ua,
      double va,
      double sa,
      double ub,
      double vb,
      double sb,
      double uc,
      double vc,
      double sc) {
    double w = -0.5 * weight * ((ub - ua) * (vc - va) - (uc - ua) * (vb - va));
    double u = ua + ub + uc;
    double v = va + vb + vc;
    double s = sa + sb + sc;
    double third = w / 3;
    double twelfth = w / 12;
    area += w;
    areaU += third * u;
    areaV += third * v;
    areaUU += twelfth * (ua * ua + ub * ub + uc * uc + u * u);
    areaUV += twelfth * (ua * va + ub * vb + uc * vc + u * v);
    areaVV += twelfth * (va * va + vb * vb + vc * vc + v * v);
    volume -= third * s;
    momentU -= twelfth * (ua * sa + ub * sb + uc * sc + u * s);
    momentV -= twelfth * (va * sa + vb * sb + vc * sc + v * s);
    momentS -= 0.5 * twelfth * (sa * sa + sb * sb + sc * sc + s * s);
  }
}
