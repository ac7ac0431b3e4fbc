package thwartwise.rules;

import java.util.List;
import java.util.Optional;
import thwartwise.rules.Parameters.Parameter;

/**
 * A formula that rule sets choose by name.
 *
 * @param name as written in the file
 * @param reach what its number can do
 * @param namesRegulation whether its own title begins with the regulation it stands in, so that the
 *     rule set need not be named as well
 */
public record Formula(
    String name,
    Reach reach,
    List<Parameter> parameters,
    FormulaMethod working,
    boolean namesRegulation) {

  /** What a formula's number can do. */
  public enum Reach {
    /** It needs nothing but the boat and may limit the recommendation. */
    MAY_LIMIT,
    /** It is shown beside the answer: no kilograms or heads to compare with follow from it. */
    ONLY_BESIDE,
    /** The same, and it asks how the boat lies with the recommended crew. */
    WITH_THE_CREW
  }

  public Formula {
    parameters = List.copyOf(parameters);
  }

  /** The same, its title beginning with the regulation it stands in. */
  Formula namingRegulation() {
    return new Formula(name, reach, parameters, working, true);
  }

  public Optional<Parameter> parameter(String wanted) {
    return parameters.stream().filter(p -> p.name().equals(wanted)).findFirst();
  }

  @Override
  public String toString() {
    return name;
  }

  /** The working of one formula: from a boat and the set's parameters to what the rule gives. */
  public interface FormulaMethod {
    /** Nothing when the rule has no word for such a boat and another rule of its set has. */
    List<FormulaResult> of(RatedBoat boat, Parameters values);
  }
}
