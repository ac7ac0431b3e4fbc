package thwartwise.walk;

import java.util.Optional;
import java.util.function.Function;
import thwartwise.measure.Dimension;
import thwartwise.measure.Quantity;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.UnitSystem;

/** Questions whose answer is measured, in the units in force; values come out in SI. */
record Tape(UnitSystem system) {

  /** Metres. */
  Entry<Double> length(String key, String subject) {
    return quantity(key, subject, Dimension.LENGTH, system.isMetric() ? "m" : "inches");
  }

  /** Kilograms. */
  Entry<Double> mass(String key, String subject) {
    return quantity(key, subject, Dimension.MASS, system.isMetric() ? "kg" : "lb");
  }

  /** Cubic metres. */
  Entry<Double> litres(String key, String subject) {
    return quantity(key, subject, Dimension.VOLUME, "litres");
  }

  /** Watts. */
  Entry<Double> power(String key, String subject) {
    return quantity(key, subject, Dimension.POWER, system.isMetric() ? "kW" : "hp");
  }

  /** Seconds. */
  Entry<Double> time(String key, String subject) {
    return quantity(key, subject, Dimension.TIME, "minutes");
  }

  private Entry<Double> quantity(String key, String subject, Dimension dimension, String unit) {
    QuantityReader reader = new QuantityReader(dimension, system);
    return Entry.of(
        key,
        subject,
        unit,
        system.examples(dimension),
        typed -> reader.read(typed).as(Quantity::si));
  }

  /** A length in words. */
  String show(double metres) {
    return system.show(metres, Dimension.LENGTH);
  }

  /** A mass in words. */
  String showMass(double kilograms) {
    return system.show(kilograms, Dimension.MASS);
  }

  /** Refuses a length outside a range; {@code ofWhat} completes "…, the". */
  Function<Double, Optional<String>> length(double least, double most, String ofWhat) {
    return new Range(Dimension.LENGTH, system, least, most, ofWhat)::complaint;
  }

  Function<Double, Optional<String>> mass(double least, double most, String ofWhat) {
    return new Range(Dimension.MASS, system, least, most, ofWhat)::complaint;
  }

  Function<Double, Optional<String>> volume(double least, double most, String ofWhat) {
    return new Range(Dimension.VOLUME, system, least, most, ofWhat)::complaint;
  }

  Function<Double, Optional<String>> power(double least, double most, String ofWhat) {
    return new Range(Dimension.POWER, system, least, most, ofWhat)::complaint;
  }

  Function<Double, Optional<String>> time(double least, double most, String ofWhat) {
    return new Range(Dimension.TIME, system, least, most, ofWhat)::complaint;
  }
}
