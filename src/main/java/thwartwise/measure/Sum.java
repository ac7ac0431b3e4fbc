package thwartwise.measure;

import java.math.BigDecimal;

/** What the parts make together, in SI, and the unit the person thinks in. */
record Sum(BigDecimal si, TypedUnit unit) {
  /** Far beyond any boat; such a figure would only garble the messages. */
  private static final BigDecimal ABSURD = new BigDecimal("1000000");

  boolean isAbsurd() {
    return si.abs().compareTo(ABSURD) > 0;
  }

  Sum times(int count) {
    return new Sum(si.multiply(BigDecimal.valueOf(count)), unit);
  }

  Sum signed(boolean negative) {
    return negative ? new Sum(si.negate(), unit) : this;
  }

  Quantity quantity(UnitSystem system) {
    double value = si.doubleValue();
    Dimension dimension = unit.dimension();
    return new Quantity(
        value, dimension, QuantityText.both(value, dimension, unit, system.isMetric()), false);
  }
}
