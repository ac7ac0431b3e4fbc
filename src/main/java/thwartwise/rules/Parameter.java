package thwartwise.rules;

import java.util.OptionalDouble;

/**
 * Something a formula wants to be told by the rule set.
 *
 * @param name its key in the file
 * @param defaultValue its value when the file leaves it out; empty when it must be there
 * @param least smallest value believed
 * @param meaning what it is, with its unit
 */
public record Parameter(
    String name,
    Kind kind,
    OptionalDouble defaultValue,
    double least,
    double most,
    String meaning) {

  /** How it is written. */
  public enum Kind {
    NUMBER,
    WHOLE,
    /** true or false. */
    FLAG,
    /** A list of pairs, each "up to" and a number. */
    STEPS
  }

  static Parameter number(String name, double least, double most, String meaning) {
    return new Parameter(name, Kind.NUMBER, OptionalDouble.empty(), least, most, meaning);
  }

  static Parameter number(
      String name, double otherwise, double least, double most, String meaning) {
    return new Parameter(name, Kind.NUMBER, OptionalDouble.of(otherwise), least, most, meaning);
  }

  static Parameter whole(String name, double least, double most, String meaning) {
    return new Parameter(name, Kind.WHOLE, OptionalDouble.empty(), least, most, meaning);
  }

  static Parameter flag(String name, String meaning) {
    return new Parameter(name, Kind.FLAG, OptionalDouble.of(0), 0, 1, meaning);
  }

  static Parameter steps(String name, String meaning) {
    return new Parameter(name, Kind.STEPS, OptionalDouble.empty(), 0, 1000, meaning);
  }
}
