package thwartwise.measured;

import java.util.Locale;
import java.util.Optional;
import thwartwise.measure.PlainNumber;

/**
 * What a number in a file measures, its unit, and the range outside which somebody slipped with the
 * unit or the tape. The ranges are judgement and wide: they catch slips, not unusual boats.
 */
public enum BoatQuantity {
  HULL_MASS("a bare hull", "kg", 1, 2000, UnitSlip.GRAMS),
  KIT_MASS("a thing carried", "kg", 0.01, 500, UnitSlip.GRAMS),
  PERSON_MASS("a person", "kg", 2, 250, UnitSlip.GRAMS),
  ALONG("a place along a small boat", "m", -2, 13, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  ATHWART(
      "a distance from the middle line", "m", -3, 3, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  HEIGHT("a height in a small boat", "m", -1, 3, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  DEPTH("a distance down from a line", "m", -1, 3, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  THICKNESS(
      "the thickness of a shell", "m", 0.0003, 0.1, UnitSlip.MILLIMETRES, UnitSlip.CENTIMETRES),
  SKEG_THICKNESS(
      "the thickness of a skeg", "m", 0.002, 0.3, UnitSlip.MILLIMETRES, UnitSlip.CENTIMETRES),
  OPENING_WIDTH("the width of an opening", "m", 0, 5, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  // Millimetres first: that is how holes are sold.
  DIAMETER("a round hole", "m", 0.005, 0.6, UnitSlip.MILLIMETRES, UnitSlip.CENTIMETRES),
  HALF_WIDTH("how far out somebody sits", "m", 0, 2, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  DENSITY("what a hull is made of", "kg/m3", 50, 9000, UnitSlip.GRAMS_PER_CUBIC_CENTIMETRE),
  CHAMBER_LITRES("a chamber", "litres", 0.1, 5000, UnitSlip.MILLILITRES, UnitSlip.CUBIC_METRES),
  KIT_LITRES("a thing carried", "litres", 0.001, 1000, UnitSlip.MILLILITRES),
  BAILER_LITRES("a bailer", "litres", 0.2, 30, UnitSlip.MILLILITRES, UnitSlip.CUBIC_METRES),
  LEAKED_LITRES("water that got in", "litres", 0, 5000, UnitSlip.MILLILITRES),
  MINUTES("a leak test", "minutes", 0.1, 50000),
  KILOWATTS("a motor on a small boat", "kW", 0.01, 60, UnitSlip.WATTS),
  RULE_METRES("the boats of a rule", "m", 0, 30, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  RULE_WATTS("the motors of a rule", "W", 0, 100000),
  WAVES("waves", "m", 0, 10, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  WIND("a wind", "m/s", 0, 80),
  FORCE("a Beaufort force", "by force", 0, 12),
  CURRENT("a current", "m/s", 0, 10, UnitSlip.CENTIMETRES),
  CELSIUS("water", "degrees Celsius", -2, 40),
  OFFSHORE("a distance from the shore", "m", 0, 100000),
  PEOPLE("one place", "people", 1, 20),
  COUNT("a count", "in number", -1e6, 1e6),
  ANY("a number", "in all", -Double.MAX_VALUE, Double.MAX_VALUE);

  private final String noun;
  private final String unit;
  private final double least;
  private final double most;
  private final UnitSlip[] slips;

  BoatQuantity(String noun, String unit, double least, double most, UnitSlip... slips) {
    this.noun = noun;
    this.unit = unit;
    this.least = least;
    this.most = most;
    this.slips = slips;
  }

  public String unit() {
    return unit;
  }

  public boolean believes(double value) {
    return value >= least && value <= most;
  }

  /** What is wrong with a value that is not believed, and what to do. */
  public String doubt(double value, String remedy) {
    return String.format(
        Locale.ROOT,
        "%s %s, outside the believable %s to %s %s for %s. %s",
        PlainNumber.number(value),
        unit,
        PlainNumber.number(least),
        PlainNumber.number(most),
        unit,
        noun,
        likelySlip(value).orElse(remedy));
  }

  private Optional<String> likelySlip(double value) {
    for (UnitSlip slip : slips) {
      double meant = PlainNumber.scaled(value, slip.tens());
      // Nothing typed in the wrong unit turns into the right one by being zero or negative.
      if (value > 0 && meant > 0 && believes(meant)) {
        return Optional.of(
            "If that was " + slip.unit() + ", write " + PlainNumber.number(meant) + ".");
      }
    }
    return Optional.empty();
  }
}
