package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Progress;
import thwartwise.boat.Boat;
import thwartwise.boat.Person;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;

/**
 * Named people are judged with their own masses: what the screen found sure enough for adults of 95
 * kg says nothing of two people of 150 kg.
 */
class NamedCrewJudgementTest {
  private static final List<Integer> HEARD = new ArrayList<>();

  private static final SpreadJudgement CANOE = judged(PlainHulls.canoe());
  private static final List<Integer> HEARD_OF_CANOE = List.copyOf(HEARD);

  private static SpreadJudgement judged(Boat boat) {
    return (SpreadJudgement)
        Inspection.judgedWithoutAdvice(
            boat,
            RuleBook.of(RuleSetFile.cautiousDefault()),
            RuleSetFile.measuringSpreads(),
            PlainHulls.TODAY,
            new Progress() {
              @Override
              public void at(Stage stage, int done, int of) {}

              @Override
              public void carries(int adults) {
                HEARD.add(adults);
              }
            });
  }

  private static List<NamedPerson> two(double each) {
    return List.of(
        NamedPerson.weighedDressed("Ann", each), NamedPerson.weighedDressed("Bea", each));
  }

  private static CrewAnswer screened(List<NamedPerson> people) {
    return CANOE
        .inspection()
        .seats(people, () -> CANOE.inspection().capacity().load(), loaded -> List.of());
  }

  @Test
  void heavy_people_whom_too_few_boats_measured_like_this_would_carry_do_not_all_go() {
    assertThat(screened(two(150)).allMayGo()).isTrue();
    CrewAnswer judged = CANOE.seats(two(150));
    assertThat(judged.allMayGo()).isFalse();
    assertThat(judged.breaks()).isNotEmpty();
    assertThat(judged.seats()).hasSizeLessThan(2);
  }

  @Test
  void people_who_are_sure_enough_sit_as_the_screen_seats_them() {
    assertThat(CANOE.seats(two(100))).isEqualTo(screened(two(100)));
  }

  // Of what the screen has for two, 93 of 100 boats would carry the pair of 150 kg and 59 of 100
  // two adults with 42 kg besides.
  @Test
  void kilograms_are_told_only_as_far_as_95_of_100_boats_carry_them() {
    Recommendation screen = CANOE.inspection().recommendation();
    Recommendation judged = CANOE.judgedByCrew().recommendation();
    CrewLimit before = screen.crewLimits().get(1);
    CrewLimit two = judged.crewLimits().get(1);
    assertThat(before.massLimit()).isEqualTo(150);
    assertThat(two.massLimit()).isBetween(95.0, 149.0);
    assertThat(two.extraMass())
        .isLessThan(before.extraMass())
        .isLessThanOrEqualTo(judged.crewLimits().get(0).extraMass());
    assertThat(judged.people()).isEqualTo(screen.people()).isEqualTo(2);
    assertThat(judged.extra()).isEqualTo(two.extraMass());
    assertThat(judged.crew()).isEqualTo(2 * two.massLimit());
    assertThat(judged.load())
        .isEqualTo(
            CANOE.inspection().model().boat().kitMass()
                + Math.max(judged.crew(), 2 * 95 + two.extraMass()));
  }

  @Test
  void the_number_of_adults_that_is_heard_first_is_the_one_recommended() {
    assertThat(HEARD_OF_CANOE).containsExactly(CANOE.judgedByCrew().recommendation().people());
  }

  @Test
  void nobody_is_seated_above_the_load_that_is_told() {
    double load = CANOE.judgedByCrew().recommendation().load();
    double kit = CANOE.inspection().model().boat().kitMass();
    assertThat(CANOE.seats(two(Math.ceil((load - kit) / 2) + 1)).allMayGo()).isFalse();
  }

  @Test
  void other_people_aboard_are_judged_as_in_a_boat_judged_from_the_start() {
    SpreadJudgement alike =
        (SpreadJudgement) judged(alone("Bo", 120)).withAboard(alone("Ann", 80).aboard());
    SpreadJudgement fresh = judged(alone("Ann", 80));
    assertThat(alike.judgedByCrew().recommendation())
        .isEqualTo(fresh.judgedByCrew().recommendation());
    assertThat(outcomes(alike)).isEqualTo(outcomes(fresh));
    assertThat(figures(alike)).isNotEqualTo(figures(judged(alone("Bo", 120))));
    assertThat(figures(alike)).isEqualTo(figures(fresh));
    assertThat(shares(alike)).isEqualTo(shares(fresh));
  }

  private static Boat alone(String name, double mass) {
    Boat canoe = PlainHulls.canoe();
    return canoe.withAboard(List.of(new Person(name, mass, canoe.places().get(0).name(), 0)));
  }

  /** Of the boat as loaded, to a millionth: a search may begin somewhere else. */
  private static Set<String> figures(SpreadJudgement judged) {
    return judged.spread().orElseThrow().asLoaded().stream()
        .map(f -> f.question() + " " + Math.round(1e6 * f.margin().room()) + " " + f.share())
        .collect(Collectors.toSet());
  }

  private static List<Double> shares(SpreadJudgement judged) {
    return IntStream.range(0, 3)
        .mapToObj(people -> judged.spread().orElseThrow().share(people))
        .toList();
  }

  private static List<String> outcomes(SpreadJudgement judged) {
    return judged.report().findings().stream()
        .map(f -> f.question() + " " + f.loadCase().kind() + " " + f.outcome())
        .toList();
  }

  @Test
  void what_is_heard_first_has_the_kilograms_of_the_record() {
    SpreadJudgement skiff = judged(PlainHulls.skiff());
    Recommendation first = skiff.judgedByCrew().recommendation();
    Recommendation recorded = skiff.recorded().recommendation();
    assertThat(lighter(recorded)).isGreaterThan(lighter(first));
    assertThat(recorded.load()).isEqualTo(first.load());
    assertThat(recorded.crew()).isEqualTo(first.crew());
    assertThat(masses(recorded)).isEqualTo(masses(first));
  }

  private static int lighter(Recommendation recommendation) {
    return recommendation.crewLimits().stream().mapToInt(limit -> limit.lighter().size()).sum();
  }

  private static List<List<Double>> masses(Recommendation recommendation) {
    return recommendation.crewLimits().stream()
        .map(limit -> List.of(limit.massLimit(), limit.extraMass()))
        .toList();
  }
}
