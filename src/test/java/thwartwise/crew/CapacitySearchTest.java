package thwartwise.crew;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.PlainHulls;
import thwartwise.inspection.QuickAnswer;
import thwartwise.rules.RuleBook;
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

  private static final Map<Boat, Limits> ASKED = new ConcurrentHashMap<>();

  /** The limits that are asked for the capacity and for whatever follows from it. */
  private static Limits asked(Boat boat) {
    return ASKED.computeIfAbsent(boat, CapacitySearchTest::limits);
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void adults_crew_and_load_are_those_of_the_table(Boat boat) {
    Recommendation table = limits(boat).recommendation(List.of());
    Capacity found = asked(boat).capacity();
    assertThat(found.people()).isEqualTo(table.people());
    assertThat(found.crew()).isEqualTo(table.crew());
    assertThat(found.load()).isEqualTo(table.load());
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void what_is_told_of_a_boat_is_reached_and_a_kilogram_more_is_not(Boat boat) {
    Capacity found = asked(boat).capacity();
    assertThat(asked(boat).mayReach(found)).isTrue();
    Capacity more =
        new Capacity(found.people(), found.crew() + 1, found.load() + 1, found.room() + 1);
    assertThat(asked(boat).mayReach(more)).isEqualTo(found.crew() == 0);
  }

  // Of a boat that leaks the boat before it did is asked too, and no more of it than whether it
  // carries as much: water in one end may level it, or bring the other end up.
  @ParameterizedTest
  @MethodSource("hulls")
  void a_boat_that_leaks_at_one_end_carries_what_its_table_says(Boat boat) {
    for (Chamber end : boat.chambers()) {
      Boat leaking = leaking(boat, end.name());
      BoatModel model = BoatModel.of(leaking, PlainHulls.TODAY);
      BalanceCache balances = new BalanceCache();
      Recommendation table = QuickAnswer.recommended(model, RuleBook.of(RULES), balances);
      assertThat(model.withFewerAnswers()).hasSize(1);
      assertThat(QuickAnswer.of(model, RuleBook.of(RULES), balances))
          .isEqualTo(new QuickAnswer(table.people(), table.crew(), table.load()));
    }
  }

  private static Boat leaking(Boat boat, String name) {
    SealTest test =
        new SealTest(PlainHulls.TODAY.minusMonths(2), "water poured in", 20, 0.9, "builder");
    Filling air = new Filling.Air(Seal.PROVEN, Optional.of(test));
    return boat.withChambers(
        boat.chambers().stream()
            .map(c -> c.name().equals(name) ? c.filledWith(c.parts().get(0), air) : c)
            .toList());
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void what_is_said_to_be_carried_is_and_a_kilogram_or_an_adult_more_is_not(Boat boat) {
    Limits limits = asked(boat);
    Capacity found = limits.capacity();
    int people = found.people();
    double crew = found.crew();
    double load = found.load();
    double room = found.room();
    assertThat(limits.carries(new Capacity(people, crew, crew, crew))).isTrue();
    assertThat(limits.carries(new Capacity(people + 1, crew, crew, crew))).isFalse();
    assertThat(limits.carries(new Capacity(people, crew + 1, load, room))).isFalse();
    assertThat(limits.carries(new Capacity(people, crew, load + 1, room))).isFalse();
    assertThat(limits.carries(new Capacity(people, crew, load, room + 1))).isFalse();
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
