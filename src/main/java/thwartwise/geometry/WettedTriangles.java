package thwartwise.geometry;

/**
 * The wet and the crossed triangles of one solid, carried from one plane to the next. Planes that
 * follow each other in a search are close together, so few vertices change sides, and only their
 * triangles are looked at again. Not thread-safe.
 */
final class WettedTriangles {
  // By which corners are wet, 1 the first, 2 the second, 4 the third: bits of those that the plane
  // crosses, and whether the whole triangle counts, less a tip if it is crossed.
  private static final int CROSSED = 0b0111_1110;
  private static final int[] WHOLE = {0, 0, 0, 1, 0, 1, 1, 1};

  // Likewise the corner that is alone on its side, and the two after it; these change places where
  // it is dry, so that the outline goes round the same way.
  private static final int[] ALONE = {0, 0, 1, 2, 2, 1, 0, 0};
  private static final int[] SECOND = {1, 1, 2, 1, 0, 0, 2, 1};
  private static final int[] THIRD = {2, 2, 0, 0, 1, 2, 1, 2};

  /** For each crossed triangle its vertices, the one that is alone on its side first. */
  final int[] aloneFirst;

  /** A bit for each triangle, in words of 64. */
  final long[] crossed;

  /** For each triangle which corners are wet. */
  private final int[] kinds;

  // Sums over the triangles that count as a whole, in the units of the counts: they are the same
  // whatever planes came before.
  private long volume;
  private long momentX;
  private long momentY;
  private long momentZ;

  private final Facets facets;
  private final Facets.Counts counts;
  private final int[] wet;

  /**
   * @param s heights of the vertices above the plane
   */
  WettedTriangles(Facets facets, double[] s) {
    this.facets = facets;
    this.counts = facets.counts();
    wet = new int[facets.x.length];
    for (int i = 0; i < wet.length; i++) {
      wet[i] = side(s[i]);
    }
    kinds = new int[facets.corners.length / 3];
    aloneFirst = new int[facets.corners.length];
    crossed = new long[kinds.length + 63 >> 6];
    addAll();
  }

  /** Whether these are the triangles of a solid. */
  boolean isOf(Facets other) {
    return facets == other;
  }

  /** 1 for a wet vertex; one in the plane is dry. */
  private static int side(double s) {
    return (int) (Double.doubleToRawLongBits(s) >>> 63);
  }

  private void addAll() {
    int[] corners = facets.corners;
    long[] row = counts.row();
    long sum = 0;
    long sumX = 0;
    long sumY = 0;
    long sumZ = 0;
    for (int i = 0, t = 0, c = 0; i < kinds.length; i++, t += 3, c += 4) {
      int kind = wet[corners[t]] + 2 * wet[corners[t + 1]] + 4 * wet[corners[t + 2]];
      long whole = WHOLE[kind];
      sum += whole * row[c];
      sumX += whole * row[c + 1];
      sumY += whole * row[c + 2];
      sumZ += whole * row[c + 3];
      kinds[i] = kind;
      order(t, kind);
      crossed[i >> 6] |= (long) (CROSSED >> kind & 1) << i;
    }
    volume = sum;
    momentX = sumX;
    momentY = sumY;
    momentZ = sumZ;
  }

  /** Volume of the tetrahedra on the triangles that count as a whole, m³. */
  double volume() {
    return volume * counts.unit();
  }

  /** First moments of those along the boat's axes, m⁴. */
  double momentX() {
    return momentX * counts.unit();
  }

  double momentY() {
    return momentY * counts.unit();
  }

  double momentZ() {
    return momentZ * counts.unit();
  }

  /**
   * Under another plane.
   *
   * @param s heights of the vertices above it
   */
  void under(double[] s) {
    Facets.Incidence at = facets.incidence();
    int[] before = wet;
    for (int i = 0; i < before.length; i++) {
      int now = side(s[i]);
      if (now != before[i]) {
        before[i] = now;
        change(i, at);
      }
    }
  }

  private void change(int vertex, Facets.Incidence at) {
    for (int i = at.starts()[vertex]; i < at.starts()[vertex + 1]; i++) {
      int corner = at.corners()[i];
      int triangle = corner >> 3;
      int before = kinds[triangle];
      int now = before ^ corner & 7;
      kinds[triangle] = now;
      order(3 * triangle, now);
      crossed[triangle >> 6] ^= (long) ((CROSSED >> now ^ CROSSED >> before) & 1) << triangle;
      count(triangle, WHOLE[now] - WHOLE[before]);
    }
  }

  /** Notes which vertex of a triangle is alone. */
  private void order(int t, int kind) {
    int[] corners = facets.corners;
    aloneFirst[t] = corners[t + ALONE[kind]];
    aloneFirst[t + 1] = corners[t + SECOND[kind]];
    aloneFirst[t + 2] = corners[t + THIRD[kind]];
  }

  private void count(int triangle, int more) {
    if (more != 0) {
      long[] row = counts.row();
      volume += more * row[4 * triangle];
      momentX += more * row[4 * triangle + 1];
      momentY += more * row[4 * triangle + 2];
      momentZ += more * row[4 * triangle + 3];
    }
  }
}
