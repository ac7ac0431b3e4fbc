package thwartwise.rules;

import java.util.List;
import thwartwise.afloat.Swamping;
import thwartwise.boat.Loading;
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
                new FormulaNote.IronLifted(
                    iron(people, each, gear), iron(people + 1, each, gear))));
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
