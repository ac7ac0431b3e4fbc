package thwartwise.walk.stations;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.measure.FeetInchesEighths;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;

/**
 * One figure of a table: a number with a decimal point or comma, a number with a fraction, or feet,
 * inches and eighths separated by dashes, where a plus adds half an eighth. The dashed notation is
 * common practice on plans and has no standard.
 *
 * @param value in the unit of the table; inches where it was written with dashes
 */
record TableFigure(BigDecimal value, boolean eighths, int line, int column) {
  private static final Pattern DECIMAL =
      Pattern.compile("-?(?:\\d{1,6}[.,]?\\d{0,6}|[.,]\\d{1,6})");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(?<whole>\\d{1,4})[ -])?(?<over>\\d{1,3})/(?<under>[1-9]\\d{0,2})");
  private static final String EXPECTED =
      " is not a figure. Expected a number such as 0.44, 16 3/8 or 1-4-3 (feet-inches-eighths).";

  /** A figure that the table does not have to give. */
  static final TableFigure ZERO = new TableFigure(BigDecimal.ZERO, false, 0, 0);

  /** Whether a cell looks like a figure, right or wrong; a name does not. */
  static boolean isLike(String cell) {
    return !cell.isEmpty()
        && cell.chars().anyMatch(c -> c >= '0' && c <= '9')
        && cell.chars().noneMatch(Character::isLetter);
  }

  static TableFigure of(String cell, int line, int column) {
    return decimal(cell)
        .or(() -> fraction(cell))
        .map(value -> new TableFigure(value, false, line, column))
        .or(() -> eighths(cell, line, column))
        .orElseThrow(() -> TableFault.at(line, column, PrintableText.excerpt(cell) + EXPECTED));
  }

  private static Optional<BigDecimal> decimal(String cell) {
    return DECIMAL.matcher(cell).matches()
        ? Optional.of(new BigDecimal(cell.replace(',', '.')))
        : Optional.empty();
  }

  private static Optional<BigDecimal> fraction(String cell) {
    Matcher matcher = FRACTION.matcher(cell);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    BigDecimal part =
        new BigDecimal(matcher.group("over"))
            .divide(new BigDecimal(matcher.group("under")), MathContext.DECIMAL32);
    return Optional.of(
        matcher.group("whole") == null ? part : part.add(new BigDecimal(matcher.group("whole"))));
  }

  private static Optional<TableFigure> eighths(String cell, int line, int column) {
    return FeetInchesEighths.inches(cell)
        .map(
            inches -> {
              if (inches instanceof Reading.Understood<BigDecimal> understood) {
                return new TableFigure(understood.value(), true, line, column);
              }
              throw TableFault.at(line, column, inches.refusal().orElseThrow());
            });
  }

  TableFigure times(int number) {
    return new TableFigure(value.multiply(BigDecimal.valueOf(number)), eighths, line, column);
  }

  boolean isZero() {
    return value.signum() == 0;
  }
}
