package thwartwise.picture;

import thwartwise.measure.Rounded;

/** How many and how heavy, in words. */
final class People {
  private People() {}

  static String counted(int people) {
    return people == 1 ? "one person" : people + " people";
  }

  static String kilograms(double mass) {
    return Rounded.up(mass, 0) + "\u00a0kg";
  }
}
