package thwartwise.rules;

import java.util.List;
import thwartwise.rules.Parameters.Parameter;

/**
 * People by the boat's length alone, from a table the set states: the first row that the boat is
 * not longer than. It knows nothing of beam or buoyancy.
 */
final class PersonsByLength {
  static final Parameter TABLE =
      Parameter.steps("table", "pairs of a length in metres, up to which, and so many people");

  private PersonsByLength() {}

  static List<FormulaResult> of(RatedBoat boat, Parameters values) {
    String title = "people by length";
    return List.of(
        values.steps().get(TABLE.name()).stream()
            .filter(step -> boat.length() <= step.upTo())
            .findFirst()
            .map(step -> FormulaResult.persons(title, (int) step.value()))
            .orElseGet(() -> FormulaResult.outside(title, new FormulaNote.BeyondLengthTable())));
  }
}
