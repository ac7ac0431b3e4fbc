package thwartwise.boat;

import thwartwise.geometry.Span;

/**
 * A stretch where people sit, kneel or stand: a thwart, a bench along one side, a bow seat.
 *
 * @param along from where to where the middle of a person can be, x, m
 * @param across the same across the boat, y to port, m
 * @param z height of what they sit, kneel or stand on, m
 * @param people how many it takes
 */
public record Place(String name, Span along, Span across, double z, int people, Posture posture) {

  /**
   * A seat across the boat, about the middle line.
   *
   * @param x along the boat, m
   * @param halfWidth how far out from the middle line the middle of a person can get, m
   */
  public Place(String name, double x, double z, double halfWidth, int people) {
    this(name, new Span(x, x), new Span(0.0 - halfWidth, halfWidth), z, people, Posture.SITTING);
  }

  /** The middle of its length. */
  public double x() {
    return along.middle();
  }

  public boolean hasLength() {
    return along.length() > 0;
  }

  public boolean isAboutTheMiddle() {
    return across.from() == -across.to();
  }

  /** Whether the middle line lies outside it, as with a bench along one side. */
  public boolean isToOneSide() {
    return !across.contains(0);
  }

  /** Where somebody sits across who said nothing: the middle line, or right out on a side seat. */
  public double usualY() {
    return across.to() < 0 ? across.from() : across.from() > 0 ? across.to() : 0;
  }

  /** From whoever sits nearest there to something so far along the boat, m. */
  double distanceAlong(double x) {
    return Math.max(0, Math.max(along.from() - x, x - along.to()));
  }

  /** The same place higher or lower. */
  public Place at(double height) {
    return new Place(name, along, across, height, people, posture);
  }

  /** How people are at a place. */
  public enum Posture {
    SITTING("sitting"),
    KNEELING("kneeling"),
    STANDING("standing");

    private final String word;

    Posture(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
