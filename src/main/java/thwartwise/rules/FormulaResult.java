package thwartwise.rules;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The result of one formula, before its rule set and its use are added.
 *
 * @param title section and name
 * @param value in the unit of {@code caps}; NaN when the rule gives no number
 * @param has what the boat has of it
 * @param note what was assumed, or why there is no number
 */
public record FormulaResult(
    String title,
    CapKind caps,
    double value,
    OptionalInt persons,
    OptionalDouble has,
    FormulaNote note) {

  static FormulaResult of(String title, CapKind caps, double value) {
    return new FormulaResult(
        title, caps, value, OptionalInt.empty(), OptionalDouble.empty(), FormulaNote.NONE);
  }

  /** A number of people without a mass. */
  public static FormulaResult persons(String title, int people) {
    return of(title, CapKind.HEADS, people).withPersons(people);
  }

  /** The rule is not written for this boat. */
  static FormulaResult outside(String title, FormulaNote why) {
    return of(title, CapKind.NOTHING, Double.NaN).withNote(why);
  }

  FormulaResult withPersons(int people) {
    return new FormulaResult(title, caps, value, OptionalInt.of(people), has, note);
  }

  FormulaResult comparedWith(double boatHas) {
    return new FormulaResult(title, caps, value, persons, OptionalDouble.of(boatHas), note);
  }

  public FormulaResult withNote(FormulaNote added) {
    return new FormulaResult(title, caps, value, persons, has, added);
  }

  FormulaResult called(String name) {
    return name.isBlank() ? this : new FormulaResult(name, caps, value, persons, has, note);
  }
}
