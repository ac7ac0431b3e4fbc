package thwartwise.rules;

import java.util.List;
import thwartwise.rules.Parameters.Parameter;

/** Caps that a local rule states as a bare number, and counts made of one. */
final class StatedCaps {
  static final Parameter PEOPLE = Parameter.whole("people", 1, 20, "how many people at most");
  static final Parameter KILOGRAMS = Parameter.number("kg", 1, 2000, "how many kilograms at most");
  static final Parameter EACH = Parameter.number("each", 30, 200, "kilograms that a person counts");
  static final Parameter GROSS =
      Parameter.number("gross-load", 1, 3000, "gross load of the boat by its plate, kg");

  private StatedCaps() {}

  static List<FormulaResult> people(RatedBoat boat, Parameters values) {
    return List.of(FormulaResult.persons("people at most", (int) values.number(PEOPLE.name())));
  }

  static List<FormulaResult> peopleKilograms(RatedBoat boat, Parameters values) {
    return List.of(
        FormulaResult.of(
            "kilograms of people at most", CapKind.PEOPLE, values.number(KILOGRAMS.name())));
  }

  static List<FormulaResult> loadKilograms(RatedBoat boat, Parameters values) {
    return List.of(
        FormulaResult.of(
            "kilograms of load at most", CapKind.LOAD, values.number(KILOGRAMS.name())));
  }

  /** The mass of a person in another rule, needed to read its figures. */
  static List<FormulaResult> person(RatedBoat boat, Parameters values) {
    return List.of(FormulaResult.of("a person counts", CapKind.PERSON, values.number(EACH.name())));
  }

  /** (gross load − motor and equipment)/75 as a boating course has it (Canada, READ). */
  static List<FormulaResult> grossLoad(RatedBoat boat, Parameters values) {
    double mass = Math.max(0, values.number(GROSS.name()) - boat.kitMass());
    double each = values.number(EACH.name());
    return List.of(
        FormulaResult.of("people from gross load", CapKind.PEOPLE, mass)
            .withPersons(persons(mass, each))
            .withNote(new FormulaNote.KitSubtracted(each)));
  }

  static int persons(double mass, double each) {
    return (int) Math.floor(mass / each + 1e-9);
  }
}
