package thwartwise.rules;

import java.util.List;
import java.util.Optional;
import thwartwise.rules.Parameters.Parameter;

/**
 * A formula that rule sets choose by name.
 *
 * @param name as written in the file
 * @param reach how its number may be used
 * @param namesRegulation whether its own title begins with the regulation, so that the rule set
 *     need not be named as well
 */
public record Formula(
    String name,
    Reach reach,
    List<Parameter> parameters,
    FormulaMethod working,
    boolean namesRegulation) {

  /** How a formula's number may be used. */
  public enum Reach {
    /** It needs nothing but the boat and may limit the recommendation. */
    MAY_LIMIT,
    /** It is shown next to the answer: it gives no kilograms or people to compare. */
    ONLY_BESIDE,
    /** As above, and it needs the boat with the recommended crew. */
    WITH_THE_CREW
  }

  public Formula {
    parameters = List.copyOf(parameters);
  }

  /** As above, with a title that begins with the regulation. */
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
    /** Empty when another rule of the set covers such a boat instead. */
    List<FormulaResult> of(RatedBoat boat, Parameters values);
  }
}
