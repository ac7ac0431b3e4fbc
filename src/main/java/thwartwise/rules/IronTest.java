package thwartwise.rules;

import java.util.List;
import java.util.Locale;
import thwartwise.afloat.Swamping;
import thwartwise.boat.Loading;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.Parameters.Parameter;

/**
 * People by what the swamped boat holds up, as in France's Division 240, art. 240-2.09 VII (law
 * text of about 2008 to 2015, READ): iron for each person and once for gear, weighed in air. Here
 * only the lift is compared; that the boat lies level and stays up is left to our own checks.
 */
final class IronTest {
  static final Parameter EACH = Parameter.number("each", 15, 1, 100, "kg of iron for each person");
  static final Parameter GEAR = Parameter.number("gear", 1.5, 0, 100, "kg of iron for the gear");

  /** Of iron at least seven times as dense as water (READ), weighed under water. */
  private static final double UNDER_WATER = 1 - 1.0 / 7;

  private IronTest() {}

  static List<FormulaResult> of(RatedBoat boat, Parameters values) {
    double each = values.number(EACH.name());
    double gear = values.number(GEAR.name());
    double spare = spare(boat);
    int people = 0;
    while (people < boat.room() && UNDER_WATER * iron(people + 1, each, gear) <= spare) {
      people++;
    }
    return List.of(
        FormulaResult.persons("swamped with iron for people", people)
            .withNote(
                String.format(
                    Locale.ROOT,
                    "by lift alone: %s of iron for so many and %s for one more",
                    mass(iron(people, each, gear), boat),
                    mass(iron(people + 1, each, gear), boat))));
  }

  private static String mass(double kilograms, RatedBoat boat) {
    UnitFormat units = new UnitFormat(boat.model().boat().units());
    return units.either(
        String.format(Locale.ROOT, "%.1f kg", kilograms), () -> units.mass(kilograms, Side.UP));
  }

  /** kg in air. */
  static double iron(int people, double each, double gear) {
    return each * people + gear;
  }

  private static double spare(RatedBoat boat) {
    var floating =
        Swamping.of(new Loading(boat.model(), List.of(), List.of(), 1), 1).floating(List.of());
    return floating.density() * floating.liftVolume() - floating.mass();
  }
}
