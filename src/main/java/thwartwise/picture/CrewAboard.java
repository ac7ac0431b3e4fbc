package thwartwise.picture;

/**
 * Who is drawn aboard.
 *
 * @param each mass of each of them, kg; zero when nobody is
 */
public record CrewAboard(int people, double each) {
  public boolean isNobody() {
    return people == 0;
  }
}
