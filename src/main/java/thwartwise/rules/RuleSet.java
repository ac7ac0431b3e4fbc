package thwartwise.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import thwartwise.measure.UnitSystem;
import thwartwise.measure.UnitText;
import thwartwise.rules.Limit.Basis;

/**
 * A named set of limits and formulas.
 *
 * @param source of the set as a whole, with its basis; blank when only its parts state it
 * @param appliesTo to which boats and waters, in words
 * @param applies the same as far as the program can tell
 * @param takesPart false for a second opinion: shown, never part of the minimum
 * @param limits by name
 */
public record RuleSet(
    String name,
    String edition,
    String source,
    String appliesTo,
    Applicability applies,
    boolean takesPart,
    Map<String, Limit> limits,
    List<RuleSetFormula> formulas) {

  public RuleSet {
    limits = Map.copyOf(limits);
    formulas = List.copyOf(formulas);
  }

  /** Limits alone, for every boat. */
  public RuleSet(String name, String edition, String appliesTo, Map<String, Limit> limits) {
    this(name, edition, "", appliesTo, Applicability.TO_ALL, true, limits, List.of());
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
   * With one of its limits tightened; a laxer value changes nothing, so combining limits can never
   * relax one.
   */
  public RuleSet tightened(String limitName, Limit other) {
    Map<String, Limit> all = new LinkedHashMap<>(limits);
    all.put(limitName, limit(limitName).stricter(other));
    return new RuleSet(name, edition, source, appliesTo, applies, takesPart, all, formulas);
  }

  /** The same with every source told in these units. */
  RuleSet in(UnitSystem units) {
    return new RuleSet(
        name,
        edition,
        UnitText.of(source).in(units).words(),
        appliesTo,
        applies,
        takesPart,
        limits.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, limit -> limit.getValue().in(units))),
        formulas.stream().map(formula -> formula.in(units)).toList());
  }

  /** Name and edition, as it is cited. */
  public String cited() {
    return name + ", " + edition;
  }

  /**
   * A formula as one rule set states it.
   *
   * @param title how it is called there; blank for the formula's own title
   * @param takesPart false for a figure that is only shown
   */
  public record RuleSetFormula(
      Formula formula,
      String title,
      Parameters parameters,
      boolean takesPart,
      Basis basis,
      UnitText source) {

    /** The same with its source told in these units. */
    RuleSetFormula in(UnitSystem units) {
      return new RuleSetFormula(formula, title, parameters, takesPart, basis, source.in(units));
    }

    String cited() {
      return source.words() + " (" + basis.word() + ")";
    }
  }
}
