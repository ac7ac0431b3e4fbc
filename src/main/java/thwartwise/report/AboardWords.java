package thwartwise.report;

import thwartwise.measure.Rounding;
import thwartwise.picture.Aboard;

/** Who is drawn aboard, in words. */
final class AboardWords {
  private AboardWords() {}

  static String of(Aboard aboard) {
    return aboard.isNobody()
        ? "nobody aboard"
        : counted(aboard.people()) + " of " + kilograms(aboard.each()) + " aboard";
  }

  private static String counted(int people) {
    return people == 1 ? "one person" : people + " people";
  }

  static String kilograms(double mass) {
    return Rounding.up(mass, 0) + "\u00a0kg";
  }
}
