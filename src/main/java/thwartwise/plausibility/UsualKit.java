package thwartwise.plausibility;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.geometry.Span;

/**
 * Kit of such boats and the mass of one of each, kg: judgement. The usual figure is on the heavy
 * side; the least and the most are wide enough for any that a boat of 2.5 to 6 m carries and narrow
 * enough for a misplaced decimal point.
 */
public enum UsualKit {
  OARS("oars", "oars?", 4.5, 1.2, 12),
  PADDLE("paddle", "paddles?", 1, 0.3, 10),
  ANCHOR("anchor and line", "anchors?", 6, 0.7, 25),
  BATTERY("battery", "battery|batteries|accu", 25, 0.5, 75),
  ELECTRIC_MOTOR("electric motor", "electric (motor|outboard)", 11, 2.5, 60),
  OUTBOARD("outboard motor", "motor|outboard|engine", 20, 2.5, 220),
  PETROL("petrol tank", "petrol|gasoline|fuel", 12, 0.3, 50),
  SOLAR_PANEL("solar panel", "solar", 4, 0.2, 25),
  LAMPS("lamps", "lamps?", 1.5, 0.05, 10),
  WATER_CAN("water can", "water (can|tank|bottle)s?", 11, 0.3, 40),
  TOOLS("tool bag", "tools?|toolbox", 4, 0.3, 40),
  BAILER("bailer", "bailer|bucket", 0.5, 0.05, 4),
  BAG("bag", "bags?", 8, 0.3, 60),
  POLE("pole", "poles?|boat ?hook", 3.5, 0.5, 15);

  private static final int TEN = 10;

  static final String SOURCE = "what such things weigh (judgement)";

  private static final Pattern COUNT =
      Pattern.compile(
          "^([2-9]|two|three|four|five|six|both)\\b(?! ?(v|volts?|ah|l|litres?|kg|hp|kw|m)\\b)",
          Pattern.CASE_INSENSITIVE);

  private static final List<String> NUMBERS = List.of("two", "three", "four", "five", "six");

  /** The words that may follow a thing without making it another: a number, or an accessory. */
  private static final String NOTHING_ELSE =
      "(, pair|s)?( \\d+)?( (and|with) (line|chain|warp|rope|chain and line))?";

  private final String word;
  private final Pattern meant;
  private final Pattern alone;
  private final double mass;
  private final Span one;

  UsualKit(String word, String meant, double mass, double least, double most) {
    this.word = word;
    this.meant = Pattern.compile("\\b(" + meant + ")\\b", Pattern.CASE_INSENSITIVE);
    this.alone =
        Pattern.compile(
            "(\\w+ )?(pairs? of )?(" + meant + ")" + NOTHING_ELSE, Pattern.CASE_INSENSITIVE);
    this.mass = mass;
    this.one = new Span(least, most);
  }

  /** The mass offered for one that nobody weighed. */
  public double mass() {
    return mass;
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(k -> k.word).toList();
  }

  /** The thing by the first words of a name, as in "battery 2". */
  public static Optional<UsualKit> named(String name) {
    String typed = name.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(k -> typed.startsWith(k.word)).findFirst();
  }

  /**
   * The masses that the thing of this name can have; empty where its name tells nothing. A name
   * with more words than the thing, such as "battery box", only limits how heavy it can be.
   */
  public static Optional<Span> mass(String name) {
    return Arrays.stream(values())
        .filter(k -> k.meant.matcher(name).find())
        .findFirst()
        .map(k -> k.of(name));
  }

  /** The mass with the decimal point moved, where that makes it usual. */
  public static Optional<Double> withPointMoved(double mass, Span usual) {
    return Optional.of(mass < usual.from() ? TEN * mass : mass / TEN).filter(usual::contains);
  }

  private Span of(String name) {
    double least = alone.matcher(name).matches() ? one.from() : 0;
    return new Span(least, one.to() * count(name));
  }

  private static int count(String name) {
    Matcher counted = COUNT.matcher(name);
    if (!counted.find()) {
      return 1;
    }
    String number = counted.group(1).toLowerCase(Locale.ROOT);
    int word = NUMBERS.indexOf(number);
    if (word >= 0) {
      return word + 2;
    }
    return number.equals("both") ? 2 : Integer.parseInt(number);
  }
}
