package thwartwise.rules;

import thwartwise.measure.UnitSystem;
import thwartwise.measure.UnitText;
import thwartwise.rules.Limit.Basis;

/**
 * A formula as one rule set states it.
 *
 * @param title how it is called there; blank for the formula's own title
 * @param takesPart false for a line the set wants shown and not obeyed
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
