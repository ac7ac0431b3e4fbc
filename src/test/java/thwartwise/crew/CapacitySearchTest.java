package thwartwise.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.PlainHulls;
import thwartwise.rules.RuleSet;

/** The figures of a recommendation found without its table, against those of the table. */
class CapacitySearchTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  static Stream<Boat> hulls() {
    return Stream.of(PlainHulls.pram(), PlainHulls.skiff());
  }

  private static Limits limits(Boat boat) {
    return new Limits(
        new CrewAssessment(BoatModel.of(boat, PlainHulls.TODAY), RULES), RULES, List.of());
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void adults_crew_and_load_are_those_of_the_table(Boat boat) {
    Recommendation table = limits(boat).recommendation(List.of());
    Capacity found = limits(boat).capacity();
    assertThat(found.people()).isEqualTo(table.people());
    assertThat(found.crew()).isEqualTo(table.crew());
    assertThat(found.load()).isEqualTo(table.load());
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void what_is_told_of_a_boat_is_reached_and_a_kilogram_more_is_not(Boat boat) {
    Capacity found = limits(boat).capacity();
    assertThat(limits(boat).mayReach(found)).isTrue();
    Capacity more =
        new Capacity(found.people(), found.crew() + 1, found.load() + 1, found.room() + 1);
    assertThat(limits(boat).mayReach(more)).isEqualTo(found.crew() == 0);
  }

  /** Alone 45 kg, children of 25 kg up to one person more than adults, and no crowd of them. */
  @Test
  void the_least_that_each_may_be_held_to_follows_one_rule() {
    CrewAssessment judge =
        new CrewAssessment(BoatModel.of(PlainHulls.pram(), PlainHulls.TODAY), RULES);
    CapacitySearch search =
        new CapacitySearch(
            judge, new CrewSearch(judge, RULES), new FormulaCaps(List.of(), 0), RULES);
    assertThat(search.least(1, 0)).isEqualTo(45);
    assertThat(search.least(1, 2)).isEqualTo(45);
    assertThat(search.least(2, 2)).isEqualTo(25);
    assertThat(search.least(3, 2)).isEqualTo(25);
    assertThat(search.least(4, 2)).isEqualTo(45);
  }
}
