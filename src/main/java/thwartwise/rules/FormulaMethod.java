package thwartwise.rules;

import java.util.List;

/** The working of one formula: from a boat and the set's parameters to what the rule gives. */
public interface FormulaMethod {
  /** Nothing when the rule has no word for such a boat and another rule of its set has. */
  List<FormulaResult> of(RatedBoat boat, Parameters told);
}
