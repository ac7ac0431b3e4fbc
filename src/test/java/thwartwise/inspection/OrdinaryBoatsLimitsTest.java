package thwartwise.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Craft;
import thwartwise.boat.Filling;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Seal;
import thwartwise.boat.Space;
import thwartwise.boat.Station;
import thwartwise.files.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.rules.RuleSet;
import thwartwise.sampleboats.BoatEdits;
import thwartwise.sampleboats.OrdinaryBoats;

/**
 * What a reader takes for granted of an answer, on ordinary boats: below the limit everything
 * meets, a hair's breadth of tape moves it by little, and who knows less gets no more. A few boats
 * in the ordinary build; all forty with {@code -Dthwartwise.sampleboats=40}.
 */
class OrdinaryBoatsLimitsTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final int BOATS = Integer.getInteger("thwartwise.sampleboats", 3);

  /** Between two spots of the floor or the boxes that a weight is stood on, m. */
  private static final double ALONG = 0.05;

  /** Whole kilograms and a search by halves: one up or down each. */
  private static final double LITTLE = 2;

  private static final Map<Boat, Recommendation> KNOWN = new ConcurrentHashMap<>();

  /** Spread over the kinds: the small ones first, so that the ordinary build stays short. */
  static Stream<Boat> boats() {
    List<Boat> forty = OrdinaryBoats.forty();
    return IntStream.range(0, BOATS).mapToObj(i -> forty.get(i * 5 % 41 % 40));
  }

  private static Recommendation of(Boat boat) {
    return KNOWN.computeIfAbsent(
        boat, b -> Inspection.of(b, RULES, OrdinaryBoats.TODAY).recommendation());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("boats")
  void every_mass_below_the_greatest_meets_in_every_seating_that_is_not_excluded(Boat boat) {
    Craft craft = Craft.of(boat, OrdinaryBoats.TODAY);
    Judge judge = new Judge(craft, RULES);
    for (Recommendation.CrewLimit limit : of(boat).crewLimits()) {
      for (Seating seating : allowed(craft, limit)) {
        for (double mass = 25; mass <= limit.eachUpTo(); mass++) {
          assertThat(judge.meetsAll(seating, mass))
              .as(
                  "%s: %d of %.0f kg at %s",
                  boat.name(), limit.people(), mass, seating.places(craft))
              .isTrue();
        }
      }
    }
  }

  private static List<Seating> allowed(Craft craft, Recommendation.CrewLimit limit) {
    return Seating.of(limit.people(), craft.boat().places()).stream()
        .filter(s -> !limit.excludedSeatings().contains(s.places(craft)))
        .toList();
  }

  /** Every kilogram once, and every spot along the boat once with nearly all of it. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("boats")
  void every_weight_below_the_extra_meets_wherever_it_stands(Boat boat) {
    Recommendation r = of(boat);
    Craft craft = Craft.of(boat, OrdinaryBoats.TODAY);
    Judge judge = new Judge(craft, RULES);
    List<Vector3> spots = spots(craft);
    int extra = (int) r.extra();
    for (Recommendation.CrewLimit limit : r.crewLimits()) {
      if (limit.people() > r.people()) {
        continue;
      }
      List<Seating> seatings = allowed(craft, limit);
      for (int k = 0; k < Math.max(extra, extra > 0 ? spots.size() : 0); k++) {
        int mass = k < extra ? k + 1 : extra - k % Math.min(5, extra);
        Vector3 at = spots.get(k * 7 % spots.size());
        Seating seating = seatings.get(k % seatings.size());
        assertThat(judge.carries(seating, r.adult(), new Loading.Weight(mass, at)))
            .as("%s: %d kg at %s, people at %s", boat.name(), mass, at, seating.places(craft))
            .isTrue();
      }
    }
  }

  /** On the floor or, where a box stands, on its top. */
  private static List<Vector3> spots(Craft craft) {
    List<Vector3> spots = new ArrayList<>();
    var length = craft.form().inside().extent(Vector3.of(1, 0, 0));
    for (double x = length.from() + ALONG; x < length.to() - ALONG; x += ALONG) {
      spots.add(Vector3.of(x, 0, height(craft, x)));
    }
    return spots;
  }

  private static double height(Craft craft, double x) {
    double floor = craft.boat().hull().floor();
    double rail = craft.form().railAt(x, true).z();
    return craft.spaces().stream()
        .map(Space::box)
        .filter(b -> b.contains(Vector3.of(x, 0, Math.max(floor, b.z().from()))))
        .mapToDouble(b -> Math.min(b.z().to(), rail))
        .max()
        .orElse(floor);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("boats")
  void a_millimetre_or_a_tenth_of_a_kilogram_moves_an_answer_by_two_kilograms_at_most(Boat boat) {
    Recommendation before = of(boat);
    hairsBreadths(boat)
        .forEach((what, edited) -> near(boat.name() + ", " + what, of(edited), before));
  }

  private static void near(String what, Recommendation after, Recommendation before) {
    assertThat(after.load())
        .as(what + ": load")
        .isBetween(before.load() - LITTLE, before.load() + LITTLE);
    for (Recommendation.CrewLimit was : before.crewLimits()) {
      after.crewLimits().stream()
          .filter(is -> is.people() == was.people())
          .forEach(
              is ->
                  assertThat(is.eachUpTo())
                      .as("%s: each of %d", what, is.people())
                      .isBetween(was.eachUpTo() - LITTLE, was.eachUpTo() + LITTLE));
    }
  }

  private static Map<String, Boat> hairsBreadths(Boat boat) {
    int middle = boat.hull().stations().size() / 2;
    int rail = boat.hull().stations().get(0).port().size() - 1;
    return Map.of(
        "hull 0.1 kg heavier", boat.withHullMass(boat.hull().mass() + 0.1),
        "hull 0.1 kg lighter", boat.withHullMass(boat.hull().mass() - 0.1),
        "middle rail 1 mm lower", BoatEdits.withPoint(boat, middle, rail, by(0, -0.001)),
        "middle rail 1 mm higher", BoatEdits.withPoint(boat, middle, rail, by(0, 0.001)),
        "middle chine 1 mm out", BoatEdits.withPoint(boat, middle, rail - 1, by(0.001, 0)),
        "seat 1 mm higher", BoatEdits.withPlace(boat, 0, p -> p.at(p.z() + 0.001)),
        "first thing 0.1 kg heavier", BoatEdits.withKit(boat, 0, k -> heavier(k, 0.1)));
  }

  private static UnaryOperator<Vector3> by(double out, double up) {
    return p -> Vector3.of(p.x(), p.y() + out, p.z() + up);
  }

  private static Kit heavier(Kit k, double by) {
    return new Kit(k.name(), k.mass() + by, k.at(), k.volume(), k.fastened(), k.in());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("boats")
  void who_knows_less_gets_no_more(Boat boat) {
    Recommendation all = of(boat);
    lessKnown(boat)
        .forEach(
            (what, edited) -> {
              Recommendation less = of(edited);
              String where = boat.name() + ", " + what;
              assertThat(less.people()).as(where).isLessThanOrEqualTo(all.people());
              assertThat(less.crew()).as(where).isLessThanOrEqualTo(all.crew());
              assertThat(less.load()).as(where).isLessThanOrEqualTo(all.load());
            });
  }

  private static Map<String, Boat> lessKnown(Boat boat) {
    List<Station> stations = boat.hull().stations();
    Chamber first = boat.chambers().get(0);
    return Map.of(
        "a chamber only claimed", BoatEdits.withChamber(boat, 0, OrdinaryBoatsLimitsTest::claimed),
        "a chamber left out", boat.withChambers(BoatEdits.without(boat.chambers(), 0)),
        "a station left out",
            BoatEdits.withStations(boat, BoatEdits.without(stations, stations.size() / 2)),
        "foam of unknown kind",
            BoatEdits.withChamber(
                boat, boat.chambers().indexOf(first), OrdinaryBoatsLimitsTest::unknownFoam));
  }

  private static Chamber claimed(Chamber c) {
    return c.filledWith(new Filling.Air(Seal.CLAIMED, Optional.empty()));
  }

  private static Chamber unknownFoam(Chamber c) {
    return c.filledWith(new Filling.Foam(false, true));
  }
}
