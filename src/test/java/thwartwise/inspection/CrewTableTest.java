package thwartwise.inspection;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.crew.Capacity;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.Limits;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Seating;
import thwartwise.crew.SeatingCount;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.report.LimitingFactorWords;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** For each number of people by itself how heavy each may be: one set of figures for all pages. */
class CrewTableTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final Map<Boat, Recommendation> KNOWN = new ConcurrentHashMap<>();

  static Stream<Boat> boats() {
    return Stream.of(PlainHulls.pram(), narrow(PlainHulls.skiff()));
  }

  /** With one place for two and one for one, to be quick. */
  private static Boat narrow(Boat skiff) {
    return skiff.withPlaces(skiff.places().subList(0, 2));
  }

  private static Limits limits(Boat boat) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    return new Limits(new CrewAssessment(model, RULES), RULES, List.of());
  }

  private static Recommendation of(Boat boat) {
    return KNOWN.computeIfAbsent(boat, b -> limits(b).recommendation(List.of()));
  }

  @ParameterizedTest
  @MethodSource("boats")
  void no_two_figures_stand_against_each_other(Boat boat) {
    Recommendation r = of(boat);
    assertThat(r.crewLimits()).isNotEmpty();
    for (Recommendation.CrewLimit limit : r.crewLimits()) {
      assertThat(limit.people() * limit.massLimit()).isLessThanOrEqualTo(r.crew());
      assertThat(limit.massLimit() >= r.adult()).isEqualTo(limit.people() <= r.people());
      assertThat(limit.people() * Math.min(limit.massLimit(), r.adult()) + limit.extraMass())
          .isLessThanOrEqualTo(r.load() - boat.kitMass());
    }
    assertThat(r.crew() + boat.kitMass()).isLessThanOrEqualTo(r.load());
  }

  /** What the page lets aboard, the seats command seats. */
  @ParameterizedTest
  @MethodSource("boats")
  void people_as_heavy_as_the_table_says_are_given_seats(Boat boat) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    for (Recommendation.CrewLimit limit : of(boat).crewLimits()) {
      List<NamedPerson> members =
          IntStream.range(0, limit.people())
              .mapToObj(i -> NamedPerson.weighedDressed("person " + i, limit.massLimit()))
              .toList();
      assertThat(CrewSeating.of(model, RuleBook.of(RULES), members).ashore())
          .as("%s", limit)
          .isEmpty();
    }
  }

  // One poor seat of three used to hold a man alone to 95 kg where two seats carry 150.
  @ParameterizedTest
  @MethodSource("boats")
  void a_poor_seat_has_its_own_figure_and_holds_nobody_else_down(Boat boat) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    CrewAssessment judge = new CrewAssessment(model, RULES);
    for (Recommendation.CrewLimit limit : of(boat).crewLimits()) {
      for (Seating seating : Seating.of(limit.people(), boat.places())) {
        limit
            .upTo(seating.places(model))
            .ifPresent(most -> assertThat(judge.meetsAll(seating, most)).isTrue());
      }
    }
  }

  // A row of more people than adults and one began at 45 kg, a seating in it at 25 kg.
  @ParameterizedTest
  @MethodSource("boats")
  void no_seating_tells_of_people_lighter_than_its_row_may(Boat boat) {
    Recommendation r = of(boat);
    for (Recommendation.CrewLimit limit : r.crewLimits()) {
      boolean children = limit.people() > 1 && limit.people() <= r.people() + 1;
      double least = RULES.value(children ? "lightest-person" : "lone-person");
      assertThat(limit.massLimit()).isGreaterThanOrEqualTo(least);
      assertThat(limit.lighter()).allMatch(l -> l.massLimit() >= least);
    }
  }

  // 79 instead of 78 kg of hull once took a third off the load limit, where an adult dropped out.
  @ParameterizedTest
  @MethodSource("boats")
  void a_tenth_of_a_kilogram_never_moves_a_figure_by_more_than_two(Boat boat) {
    Capacity here = limits(boat).capacity();
    Capacity heavier = limits(boat.withHullMass(boat.hull().mass() + 0.1)).capacity();
    assertThat(heavier.crew()).isCloseTo(here.crew(), within(2.0));
    assertThat(heavier.load()).isCloseTo(here.load(), within(2.0));
  }

  // By hand: eight places of two. Three people sit on three places in 8 x 7 x 6 / 6 = 56 ways, each
  // heavy or light: 8; or two on one and one on another in 56 ways, with 3 x 2 mixtures: 784 in
  // all.
  // Four: 70 x 16 + 168 x 12 + 28 x 9 = 3388.
  @Test
  void too_many_ways_to_sit_are_counted_and_told() {
    Boat skiff = PlainHulls.skiff();
    List<Place> places =
        IntStream.range(0, 8)
            .mapToObj(i -> new Place("place " + i, 0.5 + 0.3 * i, 0.25, 0.3, 2))
            .toList();
    SeatingCount ways = SeatingCount.of(BoatModel.of(skiff.withPlaces(places), PlainHulls.TODAY));
    assertThat(ways.room()).isEqualTo(16);
    assertThat(ways.tried()).isEqualTo(3);
    assertThat(ways.leftOut().map(LimitingFactorWords::of))
        .contains(
            "too many ways to sit (3388 for 4 people): give fewer places, or fewer people a place");
    assertThat(SeatingCount.of(BoatModel.of(skiff, PlainHulls.TODAY)).leftOut()).isEmpty();
  }
}
