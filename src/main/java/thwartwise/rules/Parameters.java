package thwartwise.rules;

import java.util.List;
import java.util.Map;

/**
 * What a rule set tells one of its formulas. Every parameter of the formula is there.
 *
 * @param numbers by name; a flag is one or nothing
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

  /** One row of a rule's table: up to and including this size, so many. */
  public record TableStep(double upTo, double value) {}
}
