package thwartwise.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.UnitFormat;
import thwartwise.report.AssumptionWords;

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
