package thwartwise.rules;

import java.util.LinkedHashMap;
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

  /**
   * The same set with one of its limits tightened; a laxer value changes nothing, so putting limits
   * together can never raise one.
   */
  public RuleSet tightened(String limitName, Limit other) {
    Map<String, Limit> all = new LinkedHashMap<>(limits);
    all.put(limitName, limit(limitName).stricter(other));
    return new RuleSet(name, edition, appliesTo, all);
  }
}
