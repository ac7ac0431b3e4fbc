package thwartwise.geometry;

/**
 * Immutable bounding block as centre and half sizes: tells cheaply that a solid is all wet or dry.
 */
record Bounds(Vector3 centre, Vector3 half) {

  static Bounds of(double[] xyz) {
    if (xyz.length == 0) {
      return new Bounds(Vector3.ZERO, Vector3.ZERO);
    }
    double[] least = {xyz[0], xyz[1], xyz[2]};
    double[] most = least.clone();
    for (int i = 0; i < xyz.length; i += 3) {
      for (int axis = 0; axis < 3; axis++) {
        least[axis] = Math.min(least[axis], xyz[i + axis]);
        most[axis] = Math.max(most[axis], xyz[i + axis]);
      }
    }
    Vector3 from = Vector3.of(least[0], least[1], least[2]);
    Vector3 to = Vector3.of(most[0], most[1], most[2]);
    return new Bounds(from.plus(to).times(0.5), to.minus(from).times(0.5));
  }

  Box block() {
    return new Box(
        extent(Vector3.of(1, 0, 0)), extent(Vector3.of(0, 1, 0)), extent(Vector3.of(0, 0, 1)));
  }

  Span extent(Vector3 direction) {
    double middle = direction.dot(centre);
    double reach = reach(direction);
    return new Span(middle - reach, middle + reach);
  }

  /** Its extent to either side of its centre along a direction. */
  double reach(Vector3 direction) {
    return Math.abs(direction.x()) * half.x()
        + Math.abs(direction.y()) * half.y()
        + Math.abs(direction.z()) * half.z();
  }
}
