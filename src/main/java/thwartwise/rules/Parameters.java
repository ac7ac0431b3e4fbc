package thwartwise.rules;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The parameters that a rule set gives to one of its formulas; all of them are present.
 *
 * @param numbers by name; a flag is 1 or 0
 * @param steps by name
 */
public record Parameters(Map<String, Double> numbers, Map<String, List<TableStep>> steps) {
  public static final Parameters NONE = new Parameters(Map.of(), Map.of());

  public Parameters {
    numbers = Map.copyOf(numbers);
    steps = Map.copyOf(steps);
  }

  public double number(String name) {
    Double number = numbers.get(name);
    if (number == null) {
      throw new IllegalArgumentException("The formula was not told \"" + name + "\"");
    }
    return number;
  }

  boolean flag(String name) {
    return number(name) > 0;
  }

  /** One row of a rule's table: the value up to and including this size. */
  public record TableStep(double upTo, double value) {}

  /**
   * A parameter that a formula needs from the rule set.
   *
   * @param name its key in the file
   * @param defaultValue the value when the file leaves it out; empty when it is required
   * @param least smallest value accepted
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
}
