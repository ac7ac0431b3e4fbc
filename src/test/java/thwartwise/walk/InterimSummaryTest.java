package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.inspection.QuickInspection;
import thwartwise.measure.UnitSystem;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.ReplayResult.PartialBoat;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

class InterimSummaryTest {

  @Test
  void before_a_place_is_known_it_tells_of_the_side_alone() {
    assertThat(
            InterimSummary.text(new QuickInspection(0.3199, Optional.empty()), UnitSystem.METRIC))
        .isEqualTo("So far: empty it floats with 0.31 m of side.");
  }

  @Test
  void then_it_tells_of_people_dry_and_swamped() {
    QuickInspection look =
        new QuickInspection(0.31, Optional.of(new QuickInspection.Carried(2, 0)));

    assertThat(InterimSummary.text(look, UnitSystem.METRIC))
        .isEqualTo(
            "So far: empty it floats with 0.31 m of side; at a first look at most two adults dry,"
                + " nobody yet when swamped.");
    assertThat(
            InterimSummary.text(
                new QuickInspection(0.31, Optional.of(new QuickInspection.Carried(0, 0))),
                UnitSystem.METRIC))
        .isEqualTo(
            "So far: empty it floats with 0.31 m of side; at a first look nobody yet, dry or"
                + " swamped.");
  }

  // 0.327 m are 12.87 inches: one foot and half an inch are told, which are 0.3175 m.
  @Test
  void in_feet_and_inches_it_tells_of_these() {
    assertThat(
            InterimSummary.text(
                new QuickInspection(0.327, Optional.empty()), UnitSystem.FEET_INCHES_POUNDS))
        .isEqualTo("So far: empty it floats with 1 ft 1/2 in of side.");
  }

  @Test
  void an_edge_under_the_water_is_told_plainly() {
    assertThat(InterimSummary.text(new QuickInspection(-0.02, Optional.empty()), UnitSystem.METRIC))
        .isEqualTo("So far: its lowest edge is under the water, even with nobody aboard.");
  }

  /** Answer by answer: nothing before the hull is whole, then one thing more at a time. */
  @Test
  void the_boat_grows_with_the_answers_once_its_hull_is_known() {
    Sheet sheet = Sheet.full(true);
    List<Boat> boats = new ArrayList<>();
    List<Answer> answers = List.of();
    while (Sheet.WALK.next(answers) instanceof Step.Ask ask) {
      Reply reply = Sheet.WALK.take(answers, sheet.at(ask.question()));
      answers = ((Reply.Accepted) reply).answers();
      Sheet.WALK
          .partialBoat(answers)
          .map(PartialBoat::boat)
          .filter(boat -> boats.isEmpty() || !boats.get(boats.size() - 1).equals(boat))
          .ifPresent(boats::add);
    }
    assertThat(boats).hasSizeGreaterThan(8);
    assertThat(boats.get(0).openings()).isEmpty();
    assertThat(boats.get(0).places()).isEmpty();
    assertThat(boats).extracting(b -> b.openings().size()).contains(0, 1, 2).isSorted();
    assertThat(boats).extracting(b -> b.chambers().size()).contains(0, 1, 2, 3).isSorted();
    assertThat(boats.get(boats.size() - 1).places())
        .extracting(Place::name)
        .containsExactly("midships thwart", "stern seat");
    assertThat(boats.get(boats.size() - 1).kit())
        .extracting(Kit::name)
        .containsExactly("battery", "motor");
  }
}
