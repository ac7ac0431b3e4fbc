package thwartwise.measure;

/**
 * A system of units, which decides what a bare number means. Volumes are litres in both, because
 * the jug is marked in them; a bare length in the second is inches, because a tape in feet and
 * inches is read in them.
 */
public enum UnitSystem {
  METRIC("metric"),
  FEET_INCHES_POUNDS("feet, inches and pounds");

  private final String word;

  UnitSystem(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  public boolean isMetric() {
    return this == METRIC;
  }

  /** The unit of a number without one. */
  public TypedUnit bare(Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> isMetric() ? TypedUnit.METRE : TypedUnit.INCH;
      case MASS -> isMetric() ? TypedUnit.KILOGRAM : TypedUnit.POUND;
      case VOLUME -> TypedUnit.LITRE;
      case POWER -> isMetric() ? TypedUnit.KILOWATT : TypedUnit.HORSEPOWER;
      case TIME -> TypedUnit.MINUTE;
    };
  }

  /** Examples of what may be typed, with the meaning of a bare number. */
  public String examples(Dimension dimension) {
    return switch (dimension) {
      case LENGTH ->
          isMetric()
              ? "a length such as 1.02 (metres), 102 cm or 3' 4 1/2\""
              : "a length such as 40 1/2 (inches), 3' 4 1/2\" or 1.02 m";
      case MASS ->
          isMetric()
              ? "a mass such as 95 (kg), 500 g or 12 st 4 lb"
              : "a mass such as 209 (lb), 12 st 4 lb or 95 kg";
      case VOLUME -> "a volume such as 12 (litres), 12.5 l or 3 us gal";
      case POWER ->
          isMetric()
              ? "a power such as 3.7 (kW), 500 W, 5 hp or 55 lb thrust"
              : "a power such as 5 (hp), 500 W, 3.7 kW or 55 lb thrust";
      case TIME -> "a time such as 20 (minutes), 90 s or 1 h";
    };
  }

  /** An SI value as a person reads it in these units. */
  public String show(double si, Dimension dimension) {
    return isMetric()
        ? QuantityText.metric(si, dimension)
        : QuantityText.both(si, dimension, bare(dimension), false);
  }
}
