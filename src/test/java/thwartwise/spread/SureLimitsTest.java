package thwartwise.spread;

import static thwartwise.Assertions.assertThat;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Loading;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.crew.Recommendation.Lighter;
import thwartwise.crew.Seating;
import thwartwise.geometry.Vector3;
import thwartwise.spread.CrewCase.LadenCrew;
import thwartwise.spread.CrewCase.SeatedCrew;

/** With shares that are given, so that what must come out is plain arithmetic. */
class SureLimitsTest {
  private static final CrewLimit ONE = limit(1, 150, 40);
  private static final CrewLimit TWO = limit(2, 100, 30);

  private static CrewLimit limit(int people, double each, double extra) {
    return new CrewLimit(people, each, extra, List.of(), List.of(), List.of());
  }

  private static SeatedCrew crew(int people, double each) {
    return new SeatedCrew(
        new Seating(List.of(people)), Collections.nCopies(people, each), Packing.SPREAD);
  }

  private static LadenCrew laden(int people, double extra) {
    return new LadenCrew(crew(people, 95), new Loading.Weight(extra, Vector3.of(1, 0, 0)));
  }

  /** With one person known to weigh so much for certain, and nothing known of two. */
  private static List<CrewLimit> lowered(double known, ToDoubleFunction<CrewCase> share) {
    SureLimits sure = new SureLimits();
    sure.addMass(ONE, known, List.of(each -> crew(1, each)));
    sure.addUncertainMass(TWO, 8, List.of(each -> crew(2, each)));
    for (CrewLimit limit : List.of(ONE, TWO)) {
      sure.addExtra(limit, extra -> laden(limit.people(), extra));
    }
    return sure.of(List.of(ONE, TWO), cases -> shares(cases, share));
  }

  private static Map<CrewCase, Double> shares(
      List<CrewCase> cases, ToDoubleFunction<CrewCase> share) {
    Map<CrewCase, Double> shares = new HashMap<>();
    cases.forEach(crew -> shares.put(crew, share.applyAsDouble(crew)));
    return shares;
  }

  /** Sure up to 80 kg each and 12 kg besides, and never beyond. */
  private static double upTo80And12(CrewCase crew) {
    return crew instanceof LadenCrew laden
        ? laden.extra().mass() <= 12 ? 1 : 0.9
        : ((SeatedCrew) crew).masses().get(0) <= 80 ? 1 : 0.7;
  }

  @Test
  void what_every_boat_carries_stays() {
    assertThat(lowered(8, crew -> 1)).containsExactly(ONE, TWO);
  }

  @Test
  void what_too_few_boats_carry_is_lowered_to_the_last_kilogram_that_enough_do() {
    List<CrewLimit> lowered = lowered(8, SureLimitsTest::upTo80And12);
    assertThat(lowered).allMatch(limit -> limit.massLimit() == 80 && limit.extraMass() == 12);
  }

  @Test
  void a_number_of_people_of_whom_none_are_light_enough_has_no_limit() {
    assertThat(lowered(95, crew -> crew.people() == 2 ? 0.955 : 1)).containsExactly(ONE);
  }

  @Test
  void the_lightest_people_may_be_all_that_is_sure() {
    List<CrewLimit> lowered =
        lowered(8, crew -> crew instanceof SeatedCrew two && two.masses().get(0) > 8 ? 0 : 1);
    assertThat(lowered).allMatch(limit -> limit.massLimit() == 8);
  }

  @Test
  void where_no_boat_carries_it_nothing_is_left_but_what_is_known() {
    assertThat(lowered(95, crew -> 0)).containsExactly(limit(1, 95, 0));
  }

  @Test
  void more_people_never_have_more_besides_them_than_fewer() {
    List<CrewLimit> lowered =
        lowered(8, crew -> crew.people() == 1 && crew instanceof LadenCrew ? 0 : 1);
    assertThat(lowered).allMatch(limit -> limit.extraMass() == 0);
    assertThat(lowered.get(1).massLimit()).isEqualTo(100);
  }

  @Test
  void of_several_mixtures_the_one_that_is_least_sure_counts() {
    SureLimits sure = new SureLimits();
    sure.addUncertainMass(TWO, 8, List.of(each -> crew(1, each), each -> crew(2, each)));
    List<CrewLimit> lowered =
        sure.of(
            List.of(TWO),
            cases -> shares(cases, crew -> crew.people() == 1 ? 1 : upTo80And12(crew)));
    assertThat(lowered.get(0).massLimit()).isEqualTo(80);
  }

  // Some of them may be left ashore.
  @Test
  void more_people_are_never_heavier_each_than_fewer() {
    List<CrewLimit> lowered =
        lowered(
            8, crew -> crew.people() == 1 && crew instanceof SeatedCrew ? upTo80And12(crew) : 1);
    assertThat(lowered).allMatch(limit -> limit.massLimit() == 80);
  }

  // Two up to 60 kg are sure by themselves, but one of them alone only up to 55 kg.
  @Test
  void a_number_of_people_lighter_than_so_many_may_be_limited_to_has_no_limit() {
    SureLimits sure = new SureLimits();
    sure.addUncertainMass(ONE, 45, List.of(each -> crew(1, each)));
    sure.addUncertainMass(TWO, 57, List.of(each -> crew(2, each)));
    List<CrewLimit> lowered =
        sure.of(
            List.of(ONE, TWO),
            cases ->
                shares(
                    cases,
                    crew ->
                        ((SeatedCrew) crew).masses().get(0) <= (crew.people() == 1 ? 55 : 60)
                            ? 1
                            : 0));
    assertThat(lowered).containsExactly(limit(1, 55, 40));
  }

  private static final List<String> BOW = List.of("bow seat");
  private static final List<String> STERN = List.of("stern bench");
  private static final List<String> ROWING = List.of("rowing thwart");

  private static CrewLimit withLighter(List<String> extraSeating) {
    return new CrewLimit(
        1,
        150,
        40,
        extraSeating,
        List.of(BOW, STERN, ROWING),
        List.of(new Lighter(BOW, 130), new Lighter(STERN, 120), new Lighter(ROWING, 110)));
  }

  /** Sure up to 80 kg on any place; alone at the bow up to 60 kg, and on the stern bench to 20. */
  private static CrewLimit seated(CrewLimit limit) {
    SureLimits sure = new SureLimits();
    sure.addUncertainMass(limit, 45, List.of(each -> crew(1, each)));
    sure.addSeating(limit, limit.lighter().get(0), 45, List.of(each -> crew(2, each)));
    sure.addSeating(limit, limit.lighter().get(1), 45, List.of(each -> crew(3, each)));
    Map<Integer, Integer> most = Map.of(1, 80, 2, 60, 3, 20);
    return sure.of(
            List.of(limit),
            cases ->
                shares(
                    cases,
                    crew ->
                        ((SeatedCrew) crew).masses().get(0) <= most.get(crew.people()) ? 1 : 0.7))
        .get(0);
  }

  @Test
  void a_seating_of_lighter_people_is_reported_with_a_mass_that_is_sure_or_not_at_all() {
    List<Lighter> lighter = seated(withLighter(List.of())).lighter();
    assertThat(lighter).singleElement().matches(seating -> seating.places().equals(BOW));
    assertThat(lighter.get(0).massLimit()).isBetween(45.0, 60.0);
  }

  @Test
  void a_seating_of_lighter_people_never_has_more_than_its_number() {
    SureLimits sure = new SureLimits();
    CrewLimit limit = withLighter(List.of());
    sure.addUncertainMass(limit, 45, List.of(each -> crew(1, each)));
    sure.addSeating(limit, limit.lighter().get(0), 45, List.of(each -> crew(2, each)));
    assertThat(
            sure.of(
                    List.of(limit),
                    cases -> shares(cases, crew -> crew.people() == 1 ? upTo80And12(crew) : 1))
                .get(0)
                .lighter())
        .containsExactly(new Lighter(BOW, 80));
  }

  @Test
  void there_is_no_extra_weight_where_nobody_may_sit_as_they_sit_with_it() {
    assertThat(seated(withLighter(BOW)).extraSeating()).isEqualTo(BOW);
    assertThat(seated(withLighter(BOW)).extraMass()).isEqualTo(40);
    for (List<String> never : List.of(STERN, ROWING)) {
      assertThat(seated(withLighter(never)).extraSeating()).isEmpty();
      assertThat(seated(withLighter(never)).extraMass()).isZero();
    }
  }
}
