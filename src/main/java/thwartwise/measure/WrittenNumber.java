package thwartwise.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The ways in which people write a number: {@code 1.02}, {@code 1,02}, {@code .5}, {@code 40 1/2},
 * {@code 3/4}. Exponents, NaN and words are not among them.
 */
final class WrittenNumber {
  static final String PATTERN =
      "(?:(?<whole>\\d+)[ -]+)?(?<over>\\d+)/(?<under>\\d+)|(?<decimal>\\d+(?:[.,]\\d+)?|[.,]\\d+)";

  /** 1,020 is a thousand and twenty to one reader and little more than one to another. */
  private static final Pattern TWO_MEANINGS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

  private WrittenNumber() {}

  /** The number; empty for a division by zero. */
  static Optional<BigDecimal> value(Matcher matched) {
    if (matched.group("decimal") != null) {
      return Optional.of(decimal(matched.group("decimal")));
    }
    BigDecimal under = new BigDecimal(matched.group("under"));
    if (under.signum() == 0) {
      return Optional.empty();
    }
    BigDecimal fraction =
        new BigDecimal(matched.group("over")).divide(under, MathContext.DECIMAL128);
    String whole = matched.group("whole");
    return Optional.of(whole == null ? fraction : fraction.add(new BigDecimal(whole)));
  }

  static BigDecimal decimal(String digits) {
    return new BigDecimal(digits.replace(',', '.'));
  }

  static boolean hasTwoMeanings(Matcher matched) {
    String digits = matched.group("decimal");
    return digits != null && TWO_MEANINGS.matcher(digits).matches();
  }

  static String ambiguity(String typed) {
    return PrintableText.excerpt(typed)
        + " can be read in two ways, as thousands or as decimals. Type it with a decimal point,"
        + " or without the comma.";
  }
}
