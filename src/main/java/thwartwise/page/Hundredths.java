package thwartwise.page;

import java.util.Locale;

/**
 * Numbers with two decimals, the same as Java's formatter gives. The drawings of a page have tens
 * of thousands of them, for which that formatter is slow.
 */
public final class Hundredths {
  private static final double WELL_WITHIN_A_LONG = 1e12;

  /** Nearer than this to the middle between two, decimals decide and not the double. */
  private static final double NEARLY_HALF = 1e-3;

  private Hundredths() {}

  /** Appends what {@code %.2f} gives. */
  public static void append(double number, StringBuilder written) {
    double hundredths = Math.abs(number) * 100;
    double part = hundredths - Math.floor(hundredths);
    if (!(hundredths < WELL_WITHIN_A_LONG) || Math.abs(part - 0.5) < NEARLY_HALF) {
      written.append(String.format(Locale.ROOT, "%.2f", number));
      return;
    }
    long whole = Math.round(hundredths);
    written.append(Double.compare(number, 0) < 0 ? "-" : "").append(whole / 100).append('.');
    written.append(whole / 10 % 10).append(whole % 10);
  }
}
