package thwartwise.rules;

import java.util.Map;

/**
 * A named set of limits.
 *
 * @param appliesTo to which boats and waters
 * @param limits by name
 */
public record RuleSet(String name, String edition, String appliesTo, Map<String, Limit> limits) {

  public RuleSet {
    limits = Map.copyOf(limits);
  }

  public Limit limit(String limitName) {
    Limit limit = limits.get(limitName);
    if (limit == null) {
      throw new IllegalArgumentException(
          "Rule set \"" + name + "\" has no limit \"" + limitName + "\"");
    }
    return limit;
  }

  public double value(String limitName) {
    return limit(limitName).value();
  }
}
