package thwartwise.geometry;

/** Immutable point or direction in the boat's own axes: x forward, y to port, z up; metres. */
public record Vector3(double x, double y, double z) {
  public static final Vector3 ZERO = new Vector3(0, 0, 0);

  public static Vector3 of(double x, double y, double z) {
    return new Vector3(x, y, z);
  }

  public Vector3 plus(Vector3 o) {
    return new Vector3(x + o.x, y + o.y, z + o.z);
  }

  public Vector3 minus(Vector3 o) {
    return new Vector3(x - o.x, y - o.y, z - o.z);
  }

  public Vector3 times(double k) {
    return new Vector3(k * x, k * y, k * z);
  }

  public double dot(Vector3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public Vector3 cross(Vector3 o) {
    return new Vector3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  public double norm() {
    return Math.sqrt(dot(this));
  }

  /** The direction of this vector; the zero vector has none. */
  public Vector3 unit() {
    double length = norm();
    if (!(length > 0)) {
      throw new IllegalArgumentException("Direction of a vector without length: " + this);
    }
    return times(1 / length);
  }

  /** The same point on the other side of the boat's middle plane. */
  public Vector3 mirrored() {
    return new Vector3(x, -y, z);
  }

  /** The point a fraction {@code t} of the way from here to {@code o}. */
  public Vector3 toward(Vector3 o, double t) {
    return new Vector3(x + t * (o.x - x), y + t * (o.y - y), z + t * (o.z - z));
  }

  public boolean isFinite() {
    return Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
  }
}
