package thwartwise.hull;

/** The names of the lines of a hull, by their place between keel and rail. */
public final class LineName {
  private LineName() {}

  /**
   * The name of a line; only three have names of their own.
   *
   * @param index from 0 at the keel
   * @param count how many points a station has
   */
  public static String of(int index, int count) {
    if (index == 0) {
      return "keel";
    }
    if (index == count - 1) {
      return "rail";
    }
    return count == 3 ? "chine" : "point " + (index + 1);
  }
}
