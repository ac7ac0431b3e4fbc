package thwartwise.rules;

import java.util.List;
import thwartwise.boat.Propulsion;

/**
 * The loading sections of 33 CFR part 183, subpart C, each for its kind of drive: 183.35 and 183.41
 * over 2 hp; 183.37 and 183.43 for oars, paddles and motors of 2 hp or less.
 */
final class Cfr183Loading {
  private Cfr183Loading() {}

  static List<FormulaResult> weightOutboard(RatedBoat boat, Parameters none) {
    return outboard(boat, "33 CFR 183.35 maximum weight, outboard", Cfr183Loading::load);
  }

  static List<FormulaResult> personsOutboard(RatedBoat boat, Parameters none) {
    return outboard(boat, "33 CFR 183.41 persons, outboard", Cfr183Loading::people);
  }

  static List<FormulaResult> weightManual(RatedBoat boat, Parameters none) {
    return smallPower(boat, "33 CFR 183.37 maximum weight, ", Cfr183Loading::load);
  }

  static List<FormulaResult> personsManual(RatedBoat boat, Parameters none) {
    return smallPower(boat, "33 CFR 183.43 persons, ", Cfr183Loading::people);
  }

  private interface Answer {
    FormulaResult of(RatedBoat boat, String title);
  }

  private static List<FormulaResult> outboard(RatedBoat boat, String title, Answer answer) {
    if (!Cfr183.overTwoHorsepower(boat)) {
      return List.of();
    }
    return List.of(
        Cfr183.motorKnown(boat)
            ? answer.of(boat, title)
            : FormulaResult.outside(title, MotorWeights.beyond()));
  }

  private static List<FormulaResult> smallPower(RatedBoat boat, String title, Answer answer) {
    if (Cfr183.overTwoHorsepower(boat)) {
      return List.of();
    }
    boolean motor = DriveKind.of(boat.propulsion()) == DriveKind.OUTBOARD;
    FormulaNote note =
        boat.propulsion() instanceof Propulsion.NotStated
            ? new FormulaNote.DriveUnstated()
            : FormulaNote.NONE;
    String kind = motor ? "motor of 2 hp or less" : "manual";
    return List.of(answer.of(boat, title + kind).withNote(note));
  }

  private static FormulaResult load(RatedBoat boat, String title) {
    return FormulaResult.of(title, CapKind.LOAD, Cfr183.weight(boat));
  }

  private static FormulaResult people(RatedBoat boat, String title) {
    double mass = Cfr183.persons(boat);
    return FormulaResult.of(title, CapKind.PEOPLE, mass).withPersons(Cfr183.persons(mass));
  }
}
