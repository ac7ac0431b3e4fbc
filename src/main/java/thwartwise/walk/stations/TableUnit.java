package thwartwise.walk.stations;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The unit of all figures of a table. */
public enum TableUnit {
  METRES("1", "m", "metres", "m|metres?|meters?"),
  CENTIMETRES("0.01", "cm", "centimetres", "cm|centimet(?:re|er)s?"),
  MILLIMETRES("0.001", "mm", "millimetres", "mm|millimet(?:re|er)s?"),
  FEET("0.3048", "ft", "decimal feet", "ft|foot|feet|decimal feet"),
  INCHES("0.0254", "in", "inches", "in|ins|inch|inches"),
  /** The figures are inches by the time this unit is applied. */
  EIGHTHS(
      "0.0254",
      "in",
      "feet-inches-eighths",
      "(?:feet|ft)[-, ]+(?:inches|in)[-, ]+(?:and )?(?:eighths|8ths)");

  /** Words that may stand before a unit in the line that names it. */
  private static final String LEADING =
      "(?:(?:all|the|figures?|dimensions?|offsets?|units?|are|in|:)\\s*)*?";

  private static final Pattern STATED_BY_WORD =
      Pattern.compile("^(?:all|figures?|dimensions?|units?)\\b");

  private final BigDecimal metres;
  private final String symbol;
  private final String words;
  private final Pattern spelling;

  TableUnit(String metres, String symbol, String words, String spelling) {
    this.metres = new BigDecimal(metres);
    this.symbol = symbol;
    this.words = words;
    this.spelling = Pattern.compile(LEADING + "(?:" + spelling + ")\\.?");
  }

  /** The unit, if this line is there to name the unit of all figures. */
  static Optional<TableUnit> stated(String line) {
    String plain = plain(line);
    return Arrays.stream(values()).filter(u -> u.spelling.matcher(plain).matches()).findFirst();
  }

  /** Whether a line is there to name the unit, known or not. */
  static boolean isStatement(String line) {
    return STATED_BY_WORD.matcher(plain(line)).find();
  }

  private static String plain(String line) {
    return line.strip().toLowerCase(Locale.ROOT).replaceAll("[()=]", " ").strip();
  }

  /** The units that a figure without a unit can be in. */
  static List<TableUnit> bare() {
    return List.of(METRES, CENTIMETRES, MILLIMETRES, FEET, INCHES);
  }

  double metres(BigDecimal figure) {
    return figure.multiply(metres).doubleValue();
  }

  /** A figure as it is typed at a question of the walk. */
  String typed(BigDecimal figure) {
    return shown(figure) + " " + symbol;
  }

  static String shown(BigDecimal figure) {
    return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
  }

  String symbol() {
    return symbol;
  }

  public String words() {
    return words;
  }
}
