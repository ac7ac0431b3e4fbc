package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.BuoyancyReason;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.measure.UnitFormat;
import thwartwise.report.AssumptionWords;
import thwartwise.rules.RuleSet;

class AssumptionsTest {

  @Test
  void figures_that_no_finding_names_are_told_with_how_well_they_are_founded() {
    assertThat(words())
        .contains(
            "Before anything meets a limit, 5 % is added to every mass, 10 % taken off every"
                + " counted volume and 0.02 m off every height above the water (judgement).",
            "Everyone to one side means 0.6 of the way out: 33 CFR 183.41: persons capacity A/0.6"
                + " for a weight A at the edge (READ).",
            "The shell is counted at 750 kg/m3 when swamped (as given).",
            "A chamber of air counts when a test of at least 10 minutes (judgement) let in at most"
                + " 1 litre (a youth dinghy class, READ) within the last 12 months; of fastened"
                + " closed-cell foam 90 % counts (judgement).",
            "A person who sits still or moves slowly keeps the trunk upright, so the weight acts"
                + " where it is carried (a weight that hangs acts at its point of suspension, READ in"
                + " textbooks of stability; 33 CFR 183.41 puts its weights at seat height, READ): at"
                + " the seat, and 0.15 m above the floor kneeling (judgement).",
            "Stiff, asleep, frightened or moving suddenly, a person leans with the boat: the weight"
                + " acts at the centre of gravity, 0.30 m above the seat, 1.00 m above the floor"
                + " standing (IMO Res. A.749(18) 3.5.2.7, READ), never under 0.45 m above the floor,"
                + " as when kneeling, and 0.10 m above and over the rail leaning out (judgement).",
            "People move: at least 0.15 m out from the middle line whatever the seat allows, and"
                + " 0.10 m to one side in standing up (judgement).",
            "In the water a body is 1000 kg to the cubic metre, 32 % of it legs (Winter 2005 as"
                + " quoted, READ) on the floor, before a seat that is a chamber, the rest 0.85 m high above the seat (judgement); a life jacket"
                + " lifts nothing here.");
  }

  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  /** The time is told from the rules and counted by the chamber: they are the same. */
  @Test
  void of_a_chamber_that_let_water_in_the_time_it_must_lift_is_told() {
    BoxBoat box = BoxBoat.of(3, 1.2, 0.4).proven("fore locker", new Span(2.5, 3));
    assertThat(AssumptionWords.of(Assumptions.of(box.model(), RULES), UnitFormat.METRIC))
        .noneMatch(words -> words.startsWith("Of a chamber that let water in"));
    SealTest test = new SealTest(BoxBoat.TODAY, "held under", 20, 0.5, "me", Optional.of(0.4));
    Filling leaking = new Filling.Air(Seal.PROVEN, Optional.of(test));
    Boat boat = box.boat();
    BoatModel model =
        BoatModel.of(
            boat.withChambers(boat.chambers().stream().map(c -> c.filledWith(leaking)).toList()),
            BoxBoat.TODAY);
    assertThat(AssumptionWords.of(Assumptions.of(model, RULES), UnitFormat.METRIC))
        .contains(
            "Of a chamber that let water in, what is left after 60 minutes counts: nobody is sure"
                + " to be seen at once: an hour until somebody comes, or the boat is bailed or"
                + " drifts ashore; 33 CFR 183.105 has foam float a boat for 18 hours (READ)"
                + " (judgement). It fills as in its test, faster by the head of water up to the"
                + " rail, as through a hole or a seep, whichever is worse; the leak is taken to lie"
                + " halfway up (judgement).");
    assertThat(model.spaces().get(0).counting().why())
        .isInstanceOfSatisfying(
            BuoyancyReason.TakesWater.class,
            leak -> assertThat(leak.heldUpMinutes()).isEqualTo(RULES.value("swamped-minutes")));
  }

  @Test
  void waters_nobody_described_are_named_with_what_they_were_taken_for() {
    assertThat(words())
        .contains(
            "Not stated, so taken as sheltered: waves of 0.10 m at most (judgement); no wave"
                + " breaks; wind of 7.9 m/s at most (READ); a current of 1.5 m/s at most"
                + " (judgement); no weir in reach; no wash of passing boats; water of 15 degrees"
                + " Celsius or warmer (READ); within 500 m of the shore (judgement).",
            "A wave counts only as freeboard: at rest its whole height must be left, with everyone"
                + " to one side 0.5 of it (judgement). How the boat moves in it is not worked out.");
  }

  private static List<String> words() {
    return AssumptionWords.of(
        Assumptions.of(BoxBoat.of(3, 1.2, 0.4).model(), RuleSetFile.cautiousDefault()),
        UnitFormat.METRIC);
  }
}
