package thwartwise.boat;

import thwartwise.geometry.Span;

/**
 * A place where people sit, kneel or stand: a thwart, a bench along one side, a bow seat.
 *
 * @param along the ends of where the middle of a person can be, x, m
 * @param across the same across the boat, y to port, m
 * @param z height of what they sit, kneel or stand on, m
 * @param people how many it takes
 */
public record Place(String name, Span along, Span across, double z, int people, Posture posture) {

  /**
   * A seat across the boat, about the middle line.
   *
   * @param x along the boat, m
   * @param halfWidth the greatest distance of the middle of a person from the middle line, m
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

  /** Whether it does not reach the middle line, as a bench along one side. */
  public boolean isToOneSide() {
    return !across.contains(0);
  }

  /** The y of somebody who stated none: the middle line, or right out on a side seat. */
  public double usualY() {
    return across.to() < 0 ? across.from() : across.from() > 0 ? across.to() : 0;
  }

  /** The distance along the boat to the nearest person who can sit there. */
  double distanceAlong(double x) {
    return Math.max(0, Math.max(along.from() - x, x - along.to()));
  }

  /** The same place at another height. */
  public Place at(double height) {
    return new Place(name, along, across, height, people, posture);
  }

  /** The posture of people at a place. */
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
