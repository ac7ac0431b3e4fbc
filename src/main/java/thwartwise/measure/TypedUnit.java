package thwartwise.measure;

import static thwartwise.measure.Dimension.LENGTH;
import static thwartwise.measure.Dimension.MASS;
import static thwartwise.measure.Dimension.POWER;
import static thwartwise.measure.Dimension.TIME;
import static thwartwise.measure.Dimension.VOLUME;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The units that people type, each with its exact size in SI. Foot and pound are the international
 * ones (exact by the agreement of 1959); inch, ounce, stone and horsepower follow from them. The US
 * gallon is 231 cubic inches, the imperial one 4.54609 litres, both exact.
 */
public enum TypedUnit {
  METRE(LENGTH, "1", true, "m", "metre", "metres", "meter", "meters"),
  CENTIMETRE(LENGTH, "0.01", true, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
  MILLIMETRE(LENGTH, "0.001", true, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
  KILOMETRE(LENGTH, "1000", true, "km", "kilometre", "kilometres", "kilometer", "kilometers"),
  FOOT(LENGTH, "0.3048", false, "ft", "foot", "feet", "'"),
  INCH(LENGTH, "0.0254", false, "in", "inch", "inches", "ins", "\""),
  KILOGRAM(MASS, "1", true, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"),
  GRAM(MASS, "0.001", true, "g", "gram", "grams"),
  STONE(MASS, "6.35029318", false, "st", "stone", "stones"),
  POUND(MASS, "0.45359237", false, "lb", "lbs", "pound", "pounds"),
  OUNCE(MASS, "0.028349523125", false, "oz", "ounce", "ounces"),
  LITRE(VOLUME, "0.001", true, "l", "litre", "litres", "liter", "liters"),
  MILLILITRE(VOLUME, "0.000001", true, "ml", "millilitre", "millilitres"),
  US_GALLON(VOLUME, "0.003785411784", false, "us gal", "us gallon", "us gallons"),
  IMPERIAL_GALLON(
      VOLUME,
      "0.00454609",
      false,
      "imp gal",
      "imp gallon",
      "imp gallons",
      "imperial gal",
      "imperial gallon",
      "imperial gallons",
      "uk gal",
      "uk gallon",
      "uk gallons"),
  WATT(POWER, "1", true, "w", "watt", "watts"),
  KILOWATT(POWER, "1000", true, "kw", "kilowatt", "kilowatts"),
  /** 550 foot-pounds of force a second. */
  HORSEPOWER(POWER, "745.69987158227022", false, "hp", "horsepower"),
  /** 75 metre-kilograms of force a second; the PS or CV of some motor plates. */
  METRIC_HORSEPOWER(POWER, "735.49875", true, "ps", "cv"),
  MINUTE(TIME, "60", true, "min", "mins", "minute", "minutes"),
  HOUR(TIME, "3600", true, "h", "hour", "hours"),
  SECOND(TIME, "1", true, "s", "sec", "second", "seconds");

  private final Dimension dimension;
  private final BigDecimal size;
  private final boolean metric;
  private final List<String> spellings;

  TypedUnit(Dimension dimension, String size, boolean metric, String... spellings) {
    this.dimension = dimension;
    this.size = new BigDecimal(size);
    this.metric = metric;
    this.spellings = List.of(spellings);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The size of one of these in the SI unit. */
  public BigDecimal size() {
    return size;
  }

  public boolean isMetric() {
    return metric;
  }

  /** The shortest spelling, for messages. */
  public String symbol() {
    return spellings.get(0);
  }

  static Optional<TypedUnit> parse(String word) {
    return Arrays.stream(values()).filter(unit -> unit.matches(word)).findFirst();
  }

  boolean matches(String word) {
    return spellings.contains(word);
  }

  /** The smaller unit that may follow this one, as inches follow feet. */
  Optional<TypedUnit> smaller() {
    return switch (this) {
      case METRE -> Optional.of(CENTIMETRE);
      case FOOT -> Optional.of(INCH);
      case STONE -> Optional.of(POUND);
      case POUND -> Optional.of(OUNCE);
      case KILOGRAM -> Optional.of(GRAM);
      case HOUR -> Optional.of(MINUTE);
      default -> Optional.empty();
    };
  }

  /** Whether a bare number after this unit can only mean the smaller one. */
  boolean takesSmallerUnit() {
    return this == FOOT || this == STONE;
  }
}
