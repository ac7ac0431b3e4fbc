package thwartwise.walk;

/** What a point of a station is called, by its place between keel and rail. */
final class PointName {

  private PointName() {}

  static String of(int point, int points) {
    if (point == 1) {
      return "keel";
    }
    if (point == points) {
      return "rail";
    }
    return points == 3 ? "chine" : "point " + point;
  }
}
