package thwartwise.crew;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Waters;
import thwartwise.checks.FindingText;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.crew.NamedPerson.Sex;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.InspectedBoats;
import thwartwise.inspection.PlainHulls;
import thwartwise.inspection.SeatingByForce;
import thwartwise.measure.UnitText;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** Named people in their seats, against every order of them tried by force. */
class CrewSeatingTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  record Case(Boat boat, List<NamedPerson> members) {
    @Override
    public String toString() {
      return boat.name() + " with " + members.stream().map(NamedPerson::how).toList();
    }
  }

  /** A case with its answer, and what was found by force so far. */
  private record SeatedCase(CrewAnswer answer, SeatingByForce force) {
    static SeatedCase of(Case c) {
      BoatModel model = model(c.boat());
      return new SeatedCase(
          CrewSeating.of(model, RULES, c.members()), new SeatingByForce(model, RULES));
    }
  }

  private static final Map<Case, SeatedCase> SEATED = new ConcurrentHashMap<>();

  private static SeatedCase seated(Case c) {
    return SEATED.computeIfAbsent(c, SeatedCase::of);
  }

  static Stream<Case> cases() {
    NamedPerson child = NamedPerson.youth("child", Sex.GIRL, 10);
    NamedPerson adult = NamedPerson.adult("adult", PlannedMasses.of(RULES));
    List<Case> plain =
        List.of(
            new Case(PlainHulls.pram(), List.of(NamedPerson.weighed("Ann", 61), child)),
            new Case(PlainHulls.pram(), List.of(NamedPerson.weighed("Bo", 130), child)),
            new Case(PlainHulls.skiff(), List.of(adult, NamedPerson.weighed("Bo", 66), child)),
            new Case(PlainHulls.skiff(), weighed(31, 44, 58, 36)),
            new Case(PlainHulls.punt(), List.of(adult, NamedPerson.weighedDressed("Bo", 88))),
            new Case(PlainHulls.canoe(), weighed(40, 50)));
    return Stream.concat(plain.stream(), IntStream.range(0, 6).mapToObj(CrewSeatingTest::random));
  }

  private static List<NamedPerson> weighed(double... masses) {
    List<NamedPerson> members = new ArrayList<>();
    for (double mass : masses) {
      members.add(NamedPerson.weighed("somebody " + (members.size() + 1), mass));
    }
    return members;
  }

  /** The skiff with other seats and a sack somewhere, off the middle line half the time. */
  private static Case random(int seed) {
    Random random = new Random(20261125L + seed);
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      // On the floor between the boxes, each well clear of the others: a seat inside a box or on
      // top of another is doubted, and then nobody is seated.
      double x = List.of(0.6, 1.15, 1.9).get(i) + 0.25 * random.nextDouble();
      int people = 1 + i % 2;
      // Two side by side on less are doubted, and then nobody is seated at all.
      double narrowest = people == 1 ? 0.1 : 0.3;
      double out = narrowest + (0.4 - narrowest) * random.nextDouble();
      places.add(new Place("seat " + i, x, 0.2 + 0.1 * random.nextDouble(), out, people));
    }
    double y = random.nextBoolean() ? 0 : 0.3 * random.nextDouble();
    Vector3 at = Vector3.of(0.5 + 2 * random.nextDouble(), y, 0.1);
    Kit sack =
        new Kit("sack", 25 * random.nextDouble(), at, Optional.empty(), true, Optional.empty());
    double light = 25 + 20 * random.nextDouble();
    return new Case(
        boat("random " + seed, places, List.of(sack)),
        List.of(
            new NamedPerson("wide", light, light + 30, UnitText.of("a range")),
            NamedPerson.weighed("Bo", 30 + 60 * random.nextDouble()),
            NamedPerson.weighed("Cy", 30 + 60 * random.nextDouble())));
  }

  private static Boat boat(String name, List<Place> places, List<Kit> kit) {
    Boat skiff = PlainHulls.skiff();
    return new Boat(
        name,
        skiff.water(),
        skiff.hull(),
        skiff.openings(),
        skiff.chambers(),
        places,
        kit,
        skiff.aboard(),
        skiff.propulsion(),
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        skiff.measuredBy(),
        skiff.assumptions());
  }

  private static BoatModel model(Boat boat) {
    return BoatModel.of(boat, PlainHulls.TODAY);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_crew_and_its_seats_are_those_found_by_force(Case c) {
    CrewAnswer answer = seated(c).answer();
    SeatingByForce force = seated(c).force();
    List<NamedPerson> going = answer.seats().stream().map(CrewAnswer.Seat::member).toList();

    assertThat(going).isEqualTo(force.largest(c.members()));
    if (!going.isEmpty()) {
      List<String> names = c.boat().places().stream().map(Place::name).toList();
      List<Integer> way = answer.seats().stream().map(s -> names.indexOf(s.place())).toList();
      assertThat(force.margin(going, way)).isCloseTo(force.best(going), within(1e-6));
      // The least of the margins shown is the one the seats were chosen by, unless as measured,
      // without the allowance, it is less.
      assertThat(answer.governing().orElseThrow().margin().share())
          .isGreaterThanOrEqualTo(force.best(going) - 1e-6);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whoever_stays_ashore_is_told_why_and_nobody_is_lost(Case c) {
    CrewAnswer answer = seated(c).answer();
    List<NamedPerson> told =
        new ArrayList<>(answer.seats().stream().map(CrewAnswer.Seat::member).toList());
    told.addAll(answer.ashore());
    assertThat(told).containsExactlyInAnyOrderElementsOf(c.members());
    assertThat(answer.breaks().isEmpty()).isEqualTo(answer.ashore().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void each_of_the_crew_alone_may_sit_wherever_it_is_not_forbidden(Case c) {
    CrewAnswer answer = seated(c).answer();
    SeatingByForce force = seated(c).force();
    for (CrewAnswer.Seat seat : answer.seats()) {
      for (int p = 0; p < c.boat().places().size(); p++) {
        String place = c.boat().places().get(p).name();
        boolean forbidden =
            answer.notAlone().contains(new CrewAnswer.NotAlone(seat.member(), place));
        assertThat(force.margin(List.of(seat.member()), List.of(p)) >= 0).isEqualTo(!forbidden);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void when_somebody_gets_out_the_others_stay_or_move_as_told(Case c) {
    CrewAnswer answer = seated(c).answer();
    SeatingByForce force = seated(c).force();
    List<String> names = c.boat().places().stream().map(Place::name).toList();
    for (CrewAnswer.Seat out : answer.seats()) {
      List<CrewAnswer.Seat> left =
          answer.moves().stream()
              .filter(m -> m.leaving().equals(out.member()))
              .map(CrewAnswer.Move::seats)
              .findFirst()
              .orElse(answer.seats().stream().filter(s -> !s.equals(out)).toList());
      List<NamedPerson> members = left.stream().map(CrewAnswer.Seat::member).toList();
      List<Integer> way = left.stream().map(s -> names.indexOf(s.place())).toList();
      assertThat(force.margin(members, way)).isGreaterThanOrEqualTo(0);
    }
  }

  @Test
  void a_heavier_person_never_gets_more_people_in() {
    BoatModel skiff = model(PlainHulls.skiff());
    int before = Integer.MAX_VALUE;
    for (double mass : List.of(30.0, 55.0, 80.0, 105.0, 130.0, 155.0, 180.0, 205.0)) {
      List<NamedPerson> members =
          List.of(NamedPerson.weighed("Ann", mass), NamedPerson.weighed("Bo", mass + 1));
      int going = CrewSeating.of(skiff, RULES, members).seats().size();
      assertThat(going).as("at %s kg", mass).isLessThanOrEqualTo(before);
      before = going;
    }
    assertThat(before).isLessThan(2);
  }

  @Test
  void the_same_people_get_the_same_seats_every_time() {
    BoatModel punt = model(PlainHulls.punt());
    List<NamedPerson> members = weighed(48, 52, 52, 61);
    CrewAnswer first = CrewSeating.of(punt, RULES, members);
    for (int i = 0; i < 3; i++) {
      assertThat(CrewSeating.of(punt, RULES, members)).isEqualTo(first);
    }
  }

  @Test
  void more_people_than_seats_are_told_so() {
    CrewAnswer answer = CrewSeating.of(model(PlainHulls.pram()), RULES, weighed(40, 41));
    assertThat(FindingText.refusals(answer.breaks()))
        .containsExactly("no place for so many: the boat has room for 1");
    assertThat(answer.seats()).hasSize(1);
  }

  /**
   * Seats chosen for these people could carry more than any seating does; the page's limit holds.
   */
  @Test
  void together_they_never_come_to_more_than_the_load_limit() {
    BoatModel skiff = model(PlainHulls.skiff());
    Recommendation page = InspectedBoats.recommendedUnderOwn(PlainHulls.skiff());
    double kit = PlainHulls.skiff().kitMass();
    double half = (page.load() - kit) / 2;
    RuleBook alone = RuleBook.of(RULES);
    assertThat(CrewSeating.of(skiff, alone, weighed(half + 1, half + 2)).ashore()).hasSize(1);
    assertThat(
            FindingText.refusals(
                CrewSeating.of(skiff, alone, weighed(half + 1, half + 2)).breaks()))
        .containsExactly(
            String.format(
                Locale.ROOT,
                "the load limit leaves %.0f kg for people, and these may come to %.0f kg",
                Math.floor(page.load() - kit),
                Math.ceil(page.load() - kit + 3 + 2 * 5)));
    assertThat(
            CrewSeating.of(skiff, alone, weighed(page.crew() / 2 - 6, page.crew() / 2 - 7)).seats())
        .hasSize(2);
  }

  @Test
  void nothing_is_recommended_for_a_boat_that_planes() {
    Boat skiff = PlainHulls.skiff();
    Boat fast =
        new Boat(
            skiff.name(),
            skiff.water(),
            skiff.hull(),
            skiff.openings(),
            skiff.chambers(),
            skiff.places(),
            skiff.kit(),
            skiff.aboard(),
            new Propulsion.Outboard(15000),
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            skiff.measuredBy(),
            skiff.assumptions());
    CrewAnswer answer = CrewSeating.of(model(fast), RULES, weighed(50));
    assertThat(answer.seats()).isEmpty();
    assertThat(FindingText.refusals(answer.breaks()).get(0))
        .contains("over 15 hp a boat of this size planes");
  }

  @Test
  void two_people_of_one_name_are_a_mistake_of_the_caller() {
    assertThatThrownBy(
            () ->
                CrewSeating.of(
                    model(PlainHulls.pram()),
                    RULES,
                    List.of(NamedPerson.weighed("Ann", 50), NamedPerson.weighed("Ann", 60))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
