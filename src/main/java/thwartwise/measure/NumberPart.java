package thwartwise.measure;

import java.math.BigDecimal;

/**
 * One number with what followed it up to the next.
 *
 * @param word in lower case without stops and commas; empty when the number stood alone
 */
record NumberPart(BigDecimal number, String word) {

  boolean isBare() {
    return word.isEmpty();
  }

  boolean isWhole() {
    return number.stripTrailingZeros().scale() <= 0;
  }

  BigDecimal times(TypedUnit unit) {
    return number.multiply(unit.size());
  }

  /**
   * The unit in {@code 3'-4"} or {@code 3 feet and 4 inches}, without what joins it to the next.
   */
  String wordBeforeAnother() {
    return word.replaceFirst("(?:-|\\band)$", "").strip();
  }
}
