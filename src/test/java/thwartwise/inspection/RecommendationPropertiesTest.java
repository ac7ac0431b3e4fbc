package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Opening;
import thwartwise.boat.Place;
import thwartwise.boat.Waters;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.Finding;
import thwartwise.checks.FindingText;
import thwartwise.checks.Findings;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.CrewSearch;
import thwartwise.crew.LimitingFactor;
import thwartwise.crew.Limits;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Seating;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** What must hold of any recommendation, whatever the boat. */
class RecommendationPropertiesTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final RuleBook BOOK = RuleSetFile.bundledRuleBook();

  static Stream<Boat> punt() {
    return Stream.of(PlainHulls.punt());
  }

  /** Not the punt where every figure is asked for several times over: its seatings are many. */
  static Stream<Boat> hulls() {
    return Stream.of(PlainHulls.pram(), PlainHulls.skiff(), PlainHulls.canoe());
  }

  /** The number of people alone, without the figures beside it, which take longer. */
  private static int people(Boat boat) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    return new Limits(new CrewAssessment(model, RULES), RULES, BOOK.figures(model)).people();
  }

  private static CrewSearch search(Boat boat) {
    return new CrewSearch(new CrewAssessment(BoatModel.of(boat, PlainHulls.TODAY), RULES), RULES);
  }

  private static Recommendation of(Boat boat) {
    return InspectedBoats.underShipped(boat).recommendation();
  }

  /** The same of a boat that only one test asks about, without the findings. */
  private static Recommendation alone(Boat boat) {
    return QuickAnswer.recommended(boat, BOOK, PlainHulls.TODAY);
  }

  // By the second method the defaults were tried with: the pram one, the skiff two, the punt four
  // or so; nobody, or a crowd, would be wrong. The punt has six seats and takes six, worked out by
  // hand at SixPlainHullsTest.
  @Test
  void a_plain_dinghy_carries_neither_nobody_nor_a_crowd() {
    assertThat(of(PlainHulls.pram()).crew()).isBetween(75.0, 150.0);
    assertThat(of(PlainHulls.skiff()).people()).isBetween(1, 3);
    assertThat(of(PlainHulls.punt()).people()).isBetween(2, 6);
  }

  // On paper, roughly: what cuts the water when it is swamped are two end tanks 0.8 m long whose
  // half-breadth rises to 0.27: I = 2 x 2/3 x 0.33^3 x 0.8^4/4 = 0.005 m4 over 57 l for hull and a
  // child of 25 kg, BM under 0.09 m. The child's weight at the seat, 0.22, and the hull's at 0.17
  // put G at 0.19; the shell, low in the boat, gives 43 of the 57 l, so B lies at 0.1 or lower with
  // an adult aboard: it rolls over. So the lift for two in the water limits, and nobody sits in it.
  @Test
  void a_canoe_with_nothing_but_end_tanks_is_held_on_to_and_nobody_sits_in_it_swamped() {
    Report report = InspectedBoats.underShipped(PlainHulls.canoe());
    assertThat(report.recommendation().holdsUpWhenSwamped()).isEqualTo(2);
    assertThat(report.findings())
        .filteredOn(f -> FindingText.check(f).startsWith("sitting in it when it is swamped"))
        .isNotEmpty()
        .allMatch(f -> f.role() == Role.FORBIDS_AN_ACT)
        .anyMatch(f -> f.outcome() == Outcome.FALLS_SHORT);
  }

  /** Every allowed crew, asked the checks one by one and not through the search. */
  @ParameterizedTest
  @MethodSource({"hulls", "punt"})
  void every_crew_up_to_the_recommendation_meets_every_check(Boat boat) {
    Recommendation r = of(boat);
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    int asked = 0;
    for (int n = 0; n <= r.people(); n++) {
      List<Seating> allowed = new ArrayList<>();
      for (Seating seating : Seating.of(n, boat.places())) {
        if (!r.excludedSeatings().contains(seating.places(model))) {
          allowed.add(seating);
        }
      }
      assertThat(allowed).as("%d people somewhere", n).isNotEmpty();
      for (Seating seating : allowed) {
        for (List<Double> masses : masses(n)) {
          asked++;
          meetsAll(model, seating, masses);
        }
      }
    }
    assertThat(asked).isPositive();
  }

  /** Children, adults, and mixtures of them the search does not try. */
  private static List<List<Double>> masses(int people) {
    if (people == 0) {
      return List.of(List.of());
    }
    List<List<Double>> all = new ArrayList<>();
    double[][] patterns = {{95}, {25}, {95, 25}, {25, 95}, {41, 77, 63}, {88, 30, 95, 52}};
    for (double[] pattern : patterns) {
      List<Double> masses = new ArrayList<>();
      for (int i = 0; i < people; i++) {
        masses.add(pattern[i % pattern.length]);
      }
      if (!all.contains(masses)) {
        all.add(masses);
      }
    }
    return all;
  }

  private static void meetsAll(BoatModel model, Seating seating, List<Double> masses) {
    LoadedBoat trial = LoadedBoat.of(model, seating.bodies(model, masses));
    for (Check check : CautiousChecks.of(RULES)) {
      if (check.role() == Role.LIMITS_CREW) {
        assertThat(Findings.of(check, trial, Allowance.of(RULES, model)))
            .as("%s %s at %s", model.boat().name(), masses, seating.places(model))
            .allMatch(f -> f.outcome() == Outcome.MEETS);
      }
    }
  }

  /** One more person of the design mass has no seating in which every check is met. */
  @ParameterizedTest
  @MethodSource({"hulls", "punt"})
  void the_next_person_breaks_something_in_every_seating(Boat boat) {
    Recommendation r = of(boat);
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    int next = r.people() + 1;
    if (r.governedBy().filter(LimitingFactor.ByCheck.class::isInstance).isEmpty()) {
      return;
    }
    CrewAssessment judge = new CrewAssessment(model, RULES);
    for (Seating seating : Seating.of(next, boat.places())) {
      assertThat(judge.notMet(seating, 95))
          .as("%s", seating.places(model))
          .isNotEmpty()
          .noneMatch(b -> b.margin().met());
    }
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void losing_a_chamber_never_raises_anything(Boat boat) {
    CrewSearch whole = search(boat);
    for (int i = 0; i < boat.chambers().size(); i++) {
      List<Chamber> left = new ArrayList<>(boat.chambers());
      left.remove(i);
      CrewSearch less = search(withChambers(boat, left));
      assertThat(less.people()).isLessThanOrEqualTo(whole.people());
      assertThat(less.holdsUpWhenSwamped()).isLessThanOrEqualTo(whole.holdsUpWhenSwamped());
      assertThat(less.staysUpWith()).isEqualTo(whole.staysUpWith());
    }
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void claims_count_for_nothing_and_proving_them_never_lowers_anything(Boat boat) {
    List<Chamber> claimed =
        boat.chambers().stream().map(RecommendationPropertiesTest::claim).toList();
    Recommendation unproven = alone(withChambers(boat, claimed));
    assertThat(unproven.holdsUpWhenSwamped()).isZero();
    assertThat(unproven.people()).isZero();
    assertThat(unproven.ifClaimsProven()).isEqualTo(of(boat).people());
    assertThat(of(boat).ifClaimsProven()).isEqualTo(of(boat).people());
    List<Chamber> one = new ArrayList<>(boat.chambers());
    one.set(0, claim(one.get(0)));
    Recommendation partly = alone(withChambers(boat, one));
    assertThat(partly.people()).isLessThanOrEqualTo(of(boat).people());
    assertThat(partly.ifClaimsProven()).isGreaterThanOrEqualTo(partly.people());
  }

  private static Chamber claim(Chamber c) {
    return new Chamber(
        c.name(),
        c.box(),
        new Filling.Air(Seal.CLAIMED, Optional.empty()),
        c.measuredVolume(),
        c.mirrored());
  }

  @Test
  void a_mirrored_boat_gives_the_same_answer() {
    Boat pram = PlainHulls.pram();
    Boat lopsided =
        with(
            pram,
            pram.hull().stations(),
            pram.chambers(),
            List.of(new Opening("rowlock notch", Vector3.of(1.2, 0.58, 0.39), 0.1, false)),
            List.of(
                new Kit(
                    "anchor",
                    4,
                    Vector3.of(1.6, 0.2, 0.09),
                    Optional.of(0.002),
                    true,
                    Optional.empty())));
    Recommendation one = alone(lopsided);
    Recommendation other = alone(mirrored(lopsided));
    assertThat(one.withheld()).isFalse();
    assertThat(other.people()).isEqualTo(one.people());
    assertThat(other.crew()).isEqualTo(one.crew());
    assertThat(other.load()).isEqualTo(one.load());
    assertThat(other.holdsUpWhenSwamped()).isEqualTo(one.holdsUpWhenSwamped());
    assertThat(other.excludedSeatings()).isEqualTo(one.excludedSeatings());
  }

  // A heavy and a light person share a thwart: which side the heavy one takes matters as soon as
  // the kit lies off the middle line.
  @Test
  void kit_on_one_side_costs_as_much_as_kit_on_the_other() {
    Boat skiff = PlainHulls.skiff();
    Kit sack =
        new Kit("sack", 30, Vector3.of(1.2, 0.35, 0.1), Optional.empty(), true, Optional.empty());
    Boat lopsided =
        with(skiff, skiff.hull().stations(), skiff.chambers(), List.of(), List.of(sack));
    Recommendation one = QuickAnswer.recommended(lopsided, BOOK, PlainHulls.TODAY);
    Recommendation other = QuickAnswer.recommended(mirrored(lopsided), BOOK, PlainHulls.TODAY);
    assertThat(one.withheld()).isFalse();
    assertThat(other.people()).isEqualTo(one.people());
    assertThat(other.crew()).isEqualTo(one.crew());
    assertThat(other.crewLimits()).isEqualTo(one.crewLimits());
  }

  // Loose weight: on every hand's breadth of floor that no chamber takes, with mixtures of people
  // the search does not try, seated as is told with it.
  @Test
  void weight_up_to_the_extra_is_carried_wherever_there_is_floor() {
    Boat skiff = PlainHulls.skiff();
    Recommendation r = of(skiff);
    BoatModel model = BoatModel.of(skiff, PlainHulls.TODAY);
    assertThat(r.extra()).isPositive();
    Recommendation.CrewLimit limit = r.crewLimits().get(r.people() - 1);
    assertThat(limit.extraMass()).isEqualTo(r.extra());
    for (Seating seating : Seating.of(r.people(), skiff.places())) {
      if (!limit.extraSeating().equals(seating.places(model))) {
        continue;
      }
      for (List<Double> masses : masses(r.people())) {
        for (double x : List.of(0.57, 0.9, 1.5, 1.9, 2.3, 2.73)) {
          LoadedBoat trial =
              LoadedBoat.of(model, seating.bodies(model, masses))
                  .with(new Loading.Weight(r.extra(), Vector3.of(x, 0, 0.02)));
          for (Check check : CautiousChecks.of(RULES)) {
            if (check.role() == Role.LIMITS_CREW) {
              assertThat(Findings.of(check, trial, Allowance.of(RULES, model)))
                  .as("%s at x %s", masses, x)
                  .allMatch(f -> f.outcome() == Outcome.MEETS);
            }
          }
        }
      }
    }
  }

  /** What the page does not forbid, no crew it permits may be upset by. */
  @ParameterizedTest
  @MethodSource("hulls")
  void an_act_that_is_not_forbidden_upsets_no_crew_that_is_permitted(Boat boat) {
    Report report = InspectedBoats.underShipped(boat);
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    List<Finding> open =
        report.findings().stream()
            .filter(f -> f.role() == Role.FORBIDS_AN_ACT && f.outcome() == Outcome.MEETS)
            .filter(f -> FindingText.condition(f).startsWith("at the limit"))
            .toList();
    for (Recommendation.CrewLimit limit : report.recommendation().crewLimits()) {
      for (Seating seating : Seating.of(limit.people(), boat.places())) {
        if (limit.excludedSeatings().contains(seating.places(model))) {
          continue;
        }
        List<Double> masses = Collections.nCopies(limit.people(), limit.massLimit());
        LoadedBoat trial = LoadedBoat.of(model, seating.bodies(model, masses));
        for (Check check : ofActs()) {
          for (Finding f : Findings.of(check, trial, Allowance.of(RULES, model))) {
            if (open.stream().anyMatch(o -> FindingText.check(o).equals(FindingText.check(f)))) {
              assertThat(f.outcome()).as("%s: %s", masses, f).isEqualTo(Outcome.MEETS);
            }
          }
        }
      }
    }
  }

  private static List<Check> ofActs() {
    return CautiousChecks.of(RULES).stream().filter(c -> c.role() == Role.FORBIDS_AN_ACT).toList();
  }

  // A boat that carries nobody but a child is no boat to send a child out in alone.
  @Test
  void a_boat_that_only_carries_a_child_carries_nobody() {
    Boat perched =
        IntStream.rangeClosed(22, 75)
            .mapToObj(RecommendationPropertiesTest::highSeated)
            .filter(b -> carriesAChild(search(b).massLimit(1)))
            .findFirst()
            .orElseThrow();
    Recommendation held = alone(perched);
    assertThat(held.withheld()).isTrue();
    assertThat(FindingText.refusals(held.reasons()))
        .containsExactly("not one person meets every check, from an adult of 95 kg down to 45 kg");
  }

  private static boolean carriesAChild(double massLimit) {
    return massLimit >= 25 && massLimit < 45;
  }

  /** The pram with its thwart raised and somebody free to slide far out on it. */
  private static Boat highSeated(int centimetres) {
    Boat pram = PlainHulls.pram();
    Place perch = new Place("perch", 1.1, centimetres / 100.0, 0.55, 1);
    return new Boat(
            pram.name(),
            pram.water(),
            pram.hull(),
            pram.openings(),
            pram.chambers(),
            List.of(perch),
            pram.kit(),
            pram.aboard(),
            pram.propulsion(),
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            pram.measuredBy(),
            pram.assumptions())
        .withConfirmedMeasurements(
            List.of(new ConfirmedMeasurement("seat:perch", "as high as it is, for this test")));
  }

  // Kit only weighs: heavier kit never lets more people in.
  @Test
  void heavier_kit_never_raises_the_recommendation() {
    int before = Integer.MAX_VALUE;
    for (double mass : List.of(20.0, 120.0)) {
      Boat skiff = PlainHulls.skiff();
      Kit sack =
          new Kit("sack", mass, Vector3.of(1.6, 0, 0.05), Optional.empty(), true, Optional.empty());
      int people =
          people(
              with(skiff, skiff.hull().stations(), skiff.chambers(), List.of(), List.of(sack))
                  .withConfirmedMeasurements(
                      List.of(new ConfirmedMeasurement("kit-mass:sack", "lead, for this test"))));
      assertThat(people).isLessThanOrEqualTo(before);
      before = people;
    }
  }

  private static Boat withChambers(Boat b, List<Chamber> chambers) {
    return with(b, b.hull().stations(), chambers, b.openings(), b.kit());
  }

  private static Boat mirrored(Boat b) {
    List<Station> stations =
        b.hull().stations().stream()
            .map(s -> new Station(s.name(), flipped(s.starboard()), flipped(s.port())))
            .toList();
    List<Chamber> chambers =
        b.chambers().stream()
            .map(
                c ->
                    new Chamber(
                        c.name(),
                        new Box(c.box().x(), c.box().y().mirrored(), c.box().z()),
                        c.filling(),
                        c.measuredVolume(),
                        c.mirrored()))
            .toList();
    List<Opening> openings =
        b.openings().stream()
            .map(o -> new Opening(o.name(), o.middle().mirrored(), o.width(), o.athwart()))
            .toList();
    List<Kit> kit =
        b.kit().stream()
            .map(
                k ->
                    new Kit(
                        k.name(), k.mass(), k.at().mirrored(), k.volume(), k.fastened(), k.in()))
            .toList();
    return with(b, stations, chambers, openings, kit);
  }

  private static List<Vector3> flipped(List<Vector3> points) {
    return points.stream().map(Vector3::mirrored).toList();
  }

  private static Boat with(
      Boat b,
      List<Station> stations,
      List<Chamber> chambers,
      List<Opening> openings,
      List<Kit> kit) {
    var h = b.hull();
    var hull =
        new thwartwise.hull.HullMeasurements(
            h.mass(),
            h.centre(),
            h.material(),
            h.density(),
            h.thickness(),
            h.floor(),
            stations,
            h.decked());
    List<Place> places = b.places();
    return new Boat(
        b.name(),
        b.water(),
        hull,
        openings,
        chambers,
        places,
        kit,
        b.aboard(),
        b.propulsion(),
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        b.measuredBy(),
        b.assumptions());
  }
}
