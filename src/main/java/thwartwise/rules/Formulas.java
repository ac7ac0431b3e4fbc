package thwartwise.rules;

import java.util.List;
import java.util.Optional;
import thwartwise.rules.Formula.FormulaMethod;
import thwartwise.rules.Formula.Reach;
import thwartwise.rules.Parameters.Parameter;

/**
 * Every formula that a rule set can choose, by name. A new formula needs a class and a line here.
 */
public final class Formulas {
  /** Computed with the checks of the inspection, which this package does not know. */
  public static final String OFFSET_LOAD = "everyone hard to one side";

  public static final String SWAMPED_WEIGHT = "weight over the side, swamped";

  private static final Parameter ADULT =
      Parameter.number("each", 75, 30, 200, "kilograms that a person counts");
  private static final Parameter HEEL_BASE =
      Parameter.number("heel-base", 10, 0, 45, "degrees, to which (24 - L)^3/600 is added");
  private static final Parameter WEIGHT_EACH =
      Parameter.number("each", 6, 1, 100, "kg under water for each person");
  private static final Parameter WEIGHT_LEAST =
      Parameter.number("least", 15, 1, 500, "kg under water at least");

  private static final List<Formula> ALL =
      List.of(
          limiting("33 CFR 183.35", Cfr183Loading::weightOutboard).namingRegulation(),
          limiting("33 CFR 183.37", Cfr183Loading::weightManual).namingRegulation(),
          limiting("33 CFR 183.41", Cfr183Loading::personsOutboard).namingRegulation(),
          limiting("33 CFR 183.43", Cfr183Loading::personsManual).namingRegulation(),
          limiting("33 CFR 183.53", Cfr183Power::of, Cfr183Power.REMOTE).namingRegulation(),
          alternatives("33 CFR 183 flotation", Cfr183Flotation::level).namingRegulation(),
          alternatives("33 CFR 183.105", Cfr183Flotation::basic).namingRegulation(),
          limiting("persons by length", PersonsByLength::of, PersonsByLength.TABLE),
          limiting("length x beam x depth", LengthBeamDepth::load, LengthBeamDepth.PER_CUBIC_METRE),
          alternatives(
              "buoyancy for a quarter of the load",
              LengthBeamDepth::buoyancy,
              LengthBeamDepth.PER_CUBIC_METRE),
          limiting("swamped with iron", IronTest::of, IronTest.EACH, IronTest.GEAR),
          limiting("people at most", StatedCaps::people, StatedCaps.PEOPLE),
          limiting(
              "kilograms of people at most", StatedCaps::peopleKilograms, StatedCaps.KILOGRAMS),
          limiting("kilograms of load at most", StatedCaps::loadKilograms, StatedCaps.KILOGRAMS),
          limiting("people from gross load", StatedCaps::grossLoad, StatedCaps.GROSS, ADULT),
          alternatives("kilograms a person", StatedCaps::person, StatedCaps.EACH),
          withTheCrew("freeboard at rest", FreeboardWithCrew::of, FreeboardWithCrew.LEAST),
          withTheCrew(OFFSET_LOAD, Formulas::untried, ADULT, HEEL_BASE),
          withTheCrew(SWAMPED_WEIGHT, Formulas::untried, WEIGHT_EACH, WEIGHT_LEAST));

  private Formulas() {}

  public static Optional<Formula> named(String name) {
    return ALL.stream().filter(f -> f.name().equals(name)).findFirst();
  }

  public static List<String> names() {
    return ALL.stream().map(Formula::name).toList();
  }

  private static List<FormulaResult> untried(RatedBoat boat, Parameters values) {
    throw new IllegalStateException("This is tried by the inspection");
  }

  private static Formula limiting(String name, FormulaMethod working, Parameter... parameters) {
    return new Formula(name, Reach.MAY_LIMIT, List.of(parameters), working, false);
  }

  private static Formula alternatives(String name, FormulaMethod working, Parameter... parameters) {
    return new Formula(name, Reach.ONLY_BESIDE, List.of(parameters), working, false);
  }

  private static Formula withTheCrew(String name, FormulaMethod working, Parameter... parameters) {
    return new Formula(name, Reach.WITH_THE_CREW, List.of(parameters), working, false);
  }
}
