package thwartwise.geometry;

/**
 * The working memory of a thread that immerses solids: rows that hold one solid at a time, and a
 * cache of what is wet of the last solids, because searches that follow each other ask for the same
 * ones under nearly the same planes. Not thread-safe.
 */
final class WorkingRows {
  static final ThreadLocal<WorkingRows> OF_THREAD = ThreadLocal.withInitial(WorkingRows::new);

  /** Several times as many as a swamped boat has solids; a power of two. */
  private static final int CACHED = 128;

  /** The number of places for one hash. */
  private static final int PLACES = 4;

  // Vertices in the water's axes.
  double[] u = {};
  double[] v = {};
  double[] s = {};

  /** Edges of the waterplane's outline: u and v of one end, then of the other. */
  double[] outline = {};

  private final WettedTriangles[] cache = new WettedTriangles[CACHED + PLACES];
  private int lastPlace;

  void makeRoom(Facets facets) {
    if (s.length < facets.x.length) {
      u = new double[facets.x.length];
      v = new double[facets.x.length];
      s = new double[facets.x.length];
    }
    if (outline.length < 4 * facets.cones.length) {
      outline = new double[4 * facets.cones.length];
    }
  }

  /** What is wet of a solid whose vertices are in the rows. */
  WettedTriangles wetted(Facets facets) {
    int first = System.identityHashCode(facets) & CACHED - 1;
    for (int i = first; i < first + PLACES; i++) {
      if (cache[i] != null && cache[i].isOf(facets)) {
        return cachedUnder(i);
      }
    }
    WettedTriangles triangles = new WettedTriangles(facets, s);
    lastPlace = (lastPlace + 1) % PLACES;
    cache[first + lastPlace] = triangles;
    return triangles;
  }

  // One whose change was broken off by an error is not used again.
  private WettedTriangles cachedUnder(int place) {
    WettedTriangles triangles = cache[place];
    cache[place] = null;
    triangles.under(s);
    cache[place] = triangles;
    return triangles;
  }
}
