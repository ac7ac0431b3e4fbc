package thwartwise.measure;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length as in tables of offsets: feet, inches and eighths separated by dashes, where a plus adds
 * half an eighth. The notation is common practice on plans and has no standard.
 */
public final class FeetInchesEighths {
  private static final Pattern DASHED =
      Pattern.compile("(?<feet>\\d{1,2})-(?<inches>\\d{1,2})-(?<eighths>\\d{1,2})(?<half>\\+?)");
  private static final BigDecimal EIGHTH = new BigDecimal("0.125");
  private static final BigDecimal HALF = new BigDecimal("0.0625");

  private FeetInchesEighths() {}

  /** Inches; empty when it is written in another way. */
  public static Optional<Reading<BigDecimal>> inches(String typed) {
    Matcher dashed =
        DASHED.matcher(NormalizedInput.isTooLong(typed) ? "" : NormalizedInput.of(typed));
    return dashed.matches() ? Optional.of(inches(typed, dashed)) : Optional.empty();
  }

  private static Reading<BigDecimal> inches(String typed, Matcher dashed) {
    int inches = Integer.parseInt(dashed.group("inches"));
    int eighths = Integer.parseInt(dashed.group("eighths"));
    if (inches > 11 || eighths > 7) {
      return Reading.refused(
          PrintableText.excerpt(typed)
              + " does not add up. Expected feet-inches-eighths, with inches up to 11 and eighths"
              + " up to 7, such as 1-4-3.");
    }
    return Reading.understood(
        new BigDecimal(12 * Integer.parseInt(dashed.group("feet")) + inches)
            .add(EIGHTH.multiply(new BigDecimal(eighths)))
            .add(dashed.group("half").isEmpty() ? BigDecimal.ZERO : HALF),
        "");
  }
}
