package thwartwise.report;

import java.util.Locale;

/** Places and heights in a boat, as somebody with a tape would say them. */
final class Along {
  private Along() {}

  static String boat(double x) {
    return x < 0 ? metres(-x) + " behind the aft end" : metres(x) + " forward of the aft end";
  }

  static String metres(double distance) {
    return String.format(Locale.ROOT, "%.2f m", distance);
  }

  /** Rounded down: foam, like all that the boat has. */
  static String litres(double volume) {
    return String.format(Locale.ROOT, "%.0f litres", Math.floor(1000 * volume + 1e-6));
  }
}
