package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Role;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.CrewSearch;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Seating;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.report.CheckWords;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** Two equal seats along the sides: who sits on one of them alone heels the boat. */
class SideSeatsRecommendedTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final Place PORT = seat("port side seat", new Span(0.28, 0.40));
  private static final Place STARBOARD = seat("starboard side seat", new Span(-0.40, -0.28));

  private static Place seat(String name, Span across) {
    return new Place(name, new Span(1.0, 1.9), across, 0.25, 2, Posture.SITTING);
  }

  private static Boat skiff(Place... places) {
    return PlainHulls.skiff().withPlaces(List.of(places));
  }

  private static Recommendation of(Boat boat) {
    return QuickAnswer.recommended(boat, RuleBook.of(RULES), PlainHulls.TODAY);
  }

  // The same two people were told "up to 99 kg each", both on one seat, when a place had no side.
  @Test
  void two_adults_on_one_side_seat_are_excluded_or_not_recommended() {
    Recommendation r = of(skiff(PORT, STARBOARD));
    for (String side : List.of(PORT.name(), STARBOARD.name())) {
      boolean allowed =
          r.crewLimits().stream().anyMatch(limit -> limit.people() == 2)
              && !r.excludedSeatings().contains(List.of(side, side));
      assertThat(allowed).as("two on the %s: %s", side, r.crewLimits()).isFalse();
    }
  }

  @Test
  void two_adults_on_the_port_seat_lay_the_boat_over() {
    BoatModel model = BoatModel.of(skiff(PORT, STARBOARD), PlainHulls.TODAY);
    CrewAssessment judge = new CrewAssessment(model, RULES);
    assertThat(judge.meetsAll(new Seating(List.of(2, 0)), 95)).isFalse();
    List<LoadedBoat> loadedBoats = judge.loadedBoats(new Seating(List.of(2, 0)), 95);
    assertThat(judge.notMet(loadedBoats))
        .extracting(b -> CheckWords.of(b.question()))
        .contains("freeboard at rest");
  }

  @Test
  void the_boat_in_a_mirror_gets_the_mirrored_answer() {
    Place bench = seat("bench", new Span(0.28, 0.40));
    Recommendation one = of(skiff(bench, middle()));
    Recommendation other = of(skiff(mirrored(bench), middle()));
    assertThat(one.withheld()).isFalse();
    assertThat(other.people()).isEqualTo(one.people());
    assertThat(other.crew()).isEqualTo(one.crew());
    assertThat(other.load()).isEqualTo(one.load());
    assertThat(sorted(other)).isEqualTo(sorted(one)).isNotEmpty();
  }

  /** What is allowed must be met wherever on their seats people sit, and not only where tried. */
  @Test
  void an_allowed_seating_meets_every_check_anywhere_on_the_seats() {
    Boat boat = skiff(PORT, STARBOARD);
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    CrewSearch search = new CrewSearch(new CrewAssessment(model, RULES), RULES);
    Random random = new Random(20261126);
    List<Check> limiting =
        CautiousChecks.of(RULES).stream().filter(c -> c.role() == Role.LIMITS_CREW).toList();
    int asked = 0;
    for (int people = 1; people <= 3; people++) {
      double each = Math.floor(search.massLimit(people));
      for (Seating seating : search.allowed(people, each)) {
        for (int i = 0; i < 8; i++) {
          LoadedBoat trial = LoadedBoat.of(model, anywhere(model, seating, each, random));
          asked++;
          for (Check check : limiting) {
            for (Allowance taken : List.of(Allowance.NONE, Allowance.of(RULES, model))) {
              assertThat(check.readings(trial.under(taken)))
                  .as("%s %s", seating, trial.people())
                  .allMatch(CheckReading::met);
            }
          }
        }
      }
    }
    assertThat(asked).isPositive();
  }

  private static List<Body> anywhere(BoatModel model, Seating seating, double each, Random random) {
    List<Body> bodies = new ArrayList<>();
    for (int p = 0; p < seating.counts().size(); p++) {
      Place place = model.boat().places().get(p);
      int here = seating.counts().get(p);
      double free = place.along().length() - 0.45 * (here - 1);
      double aft = place.along().from() + free * random.nextDouble();
      for (int n = 0; n < here; n++) {
        double y = place.across().from() + place.across().length() * random.nextDouble();
        Vector3 spot = Vector3.of(aft + 0.45 * n, y, place.z());
        bodies.add(Body.at("person " + n, each, place, spot, model.boat().hull().floor()));
      }
    }
    return bodies;
  }

  private static Place middle() {
    return new Place("middle thwart", 2.2, 0.25, 0.40, 1);
  }

  private static Place mirrored(Place p) {
    return new Place(p.name(), p.along(), p.across().mirrored(), p.z(), p.people(), p.posture());
  }

  private static Set<String> sorted(Recommendation r) {
    return r.excludedSeatings().stream()
        .map(s -> s.stream().sorted().collect(Collectors.joining(" + ")))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
