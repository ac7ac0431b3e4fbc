package thwartwise.json;

import java.util.Locale;
import java.util.Optional;

/**
 * What a number in a file measures, its unit, and the range outside which somebody slipped with the
 * unit or the tape. The ranges are judgement and wide: they catch slips, not unusual boats.
 */
public enum Quantity {
  HULL_MASS("a bare hull", "kg", 1, 2000, Slip.GRAMS),
  KIT_MASS("a thing carried", "kg", 0.01, 500, Slip.GRAMS),
  PERSON_MASS("a person", "kg", 2, 250, Slip.GRAMS),
  ALONG("a place along a small boat", "m", -2, 13, Slip.CENTIMETRES, Slip.MILLIMETRES),
  ATHWART("a distance from the middle line", "m", -3, 3, Slip.CENTIMETRES, Slip.MILLIMETRES),
  HEIGHT("a height in a small boat", "m", -1, 3, Slip.CENTIMETRES, Slip.MILLIMETRES),
  DEPTH("a distance down from a line", "m", -1, 3, Slip.CENTIMETRES, Slip.MILLIMETRES),
  THICKNESS("the thickness of a shell", "m", 0.0003, 0.1, Slip.MILLIMETRES, Slip.CENTIMETRES),
  SKEG_THICKNESS("the thickness of a skeg", "m", 0.002, 0.3, Slip.MILLIMETRES, Slip.CENTIMETRES),
  OPENING_WIDTH("the width of an opening", "m", 0, 5, Slip.CENTIMETRES, Slip.MILLIMETRES),
  // Millimetres first: that is how holes are sold.
  DIAMETER("a round hole", "m", 0.005, 0.6, Slip.MILLIMETRES, Slip.CENTIMETRES),
  HALF_WIDTH("how far out somebody sits", "m", 0, 2, Slip.CENTIMETRES, Slip.MILLIMETRES),
  DENSITY("what a hull is made of", "kg/m3", 50, 9000, Slip.GRAMS_PER_CUBIC_CENTIMETRE),
  CHAMBER_LITRES("a chamber", "litres", 0.1, 5000, Slip.MILLILITRES, Slip.CUBIC_METRES),
  KIT_LITRES("a thing carried", "litres", 0.001, 1000, Slip.MILLILITRES),
  BAILER_LITRES("a bailer", "litres", 0.2, 30, Slip.MILLILITRES, Slip.CUBIC_METRES),
  LEAKED_LITRES("water that got in", "litres", 0, 5000, Slip.MILLILITRES),
  MINUTES("a leak test", "minutes", 0.1, 50000),
  KILOWATTS("a motor on a small boat", "kW", 0.01, 60, Slip.WATTS),
  RULE_METRES("the boats of a rule", "m", 0, 30, Slip.CENTIMETRES, Slip.MILLIMETRES),
  RULE_WATTS("the motors of a rule", "W", 0, 100000),
  WAVES("waves", "m", 0, 10, Slip.CENTIMETRES, Slip.MILLIMETRES),
  WIND("a wind", "m/s", 0, 80),
  FORCE("a Beaufort force", "by force", 0, 12),
  CURRENT("a current", "m/s", 0, 10, Slip.CENTIMETRES),
  CELSIUS("water", "degrees Celsius", -2, 40),
  OFFSHORE("a distance from the shore", "m", 0, 100000),
  PEOPLE("one place", "people", 1, 20),
  COUNT("a count", "in number", -1e6, 1e6),
  ANY("a number", "in all", -Double.MAX_VALUE, Double.MAX_VALUE);

  private final String noun;
  private final String unit;
  private final double least;
  private final double most;
  private final Slip[] slips;

  Quantity(String noun, String unit, double least, double most, Slip... slips) {
    this.noun = noun;
    this.unit = unit;
    this.least = least;
    this.most = most;
    this.slips = slips;
  }

  String unit() {
    return unit;
  }

  public boolean believes(double value) {
    return value >= least && value <= most;
  }

  /** What is wrong with a value that is not believed, and what to do. */
  String doubt(double value, String remedy) {
    return String.format(
        Locale.ROOT,
        "%s %s, outside the believable %s to %s %s for %s. %s",
        Typed.number(value),
        unit,
        Typed.number(least),
        Typed.number(most),
        unit,
        noun,
        likelySlip(value).orElse(remedy));
  }

  private Optional<String> likelySlip(double value) {
    for (Slip slip : slips) {
      double meant = Typed.scaled(value, slip.tens());
      // Nothing typed in the wrong unit turns into the right one by being zero or negative.
      if (value > 0 && meant > 0 && believes(meant)) {
        return Optional.of("If that was " + slip.unit() + ", write " + Typed.number(meant) + ".");
      }
    }
    return Optional.empty();
  }
}
