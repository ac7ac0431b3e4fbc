package thwartwise.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;

/** Reads plain numbers: a count, or a figure whose unit the question fixes. */
public final class NumberReader {
  private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");
  private static final Pattern FIGURE = Pattern.compile(WrittenNumber.PATTERN);

  private static final BigDecimal MOST = new BigDecimal("1000000");

  private NumberReader() {}

  private static final List<String> WORDS =
      List.of(
          "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  public static Reading<Integer> whole(String typed) {
    int word = NormalizedInput.isTooLong(typed) ? -1 : WORDS.indexOf(NormalizedInput.of(typed));
    if (word >= 0) {
      return Reading.understood(word, Integer.toString(word));
    }
    if (NormalizedInput.isTooLong(typed) || !WHOLE.matcher(NormalizedInput.of(typed)).matches()) {
      return Reading.refused(
          PrintableText.excerpt(typed) + " is not a whole number. Type a whole number such as 5.");
    }
    int value = Integer.parseInt(NormalizedInput.of(typed));
    return Reading.understood(value, Integer.toString(value));
  }

  /** A number from zero to a million, with decimals or a fraction. */
  public static Reading<Double> figure(String typed) {
    var matcher = FIGURE.matcher(NormalizedInput.isTooLong(typed) ? "" : NormalizedInput.of(typed));
    if (!matcher.matches()) {
      return notANumber(typed);
    }
    if (WrittenNumber.hasTwoMeanings(matcher)) {
      return Reading.refused(WrittenNumber.ambiguity(typed));
    }
    return WrittenNumber.value(matcher)
        .filter(value -> value.compareTo(MOST) <= 0)
        .map(value -> Reading.understood(value.doubleValue(), shown(value)))
        .orElseGet(() -> notANumber(typed));
  }

  private static String shown(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private static Reading<Double> notANumber(String typed) {
    return Reading.refused(
        PrintableText.excerpt(typed) + " is not a number. Type a number such as 12.5.");
  }
}
