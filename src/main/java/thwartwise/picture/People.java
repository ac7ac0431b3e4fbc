package thwartwise.picture;

import thwartwise.measure.Rounding;

/** How many and how heavy, in words. */
final class People {
  private People() {}

  static String counted(int people) {
    return people == 1 ? "one person" : people + " people";
  }

  static String kilograms(double mass) {
    return Rounding.up(mass, 0) + "\u00a0kg";
  }
}
