package thwartwise.spread;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.checks.Check;
import thwartwise.checks.CheckReading;
import thwartwise.checks.GreatestPull;
import thwartwise.checks.RainAtTheMooring;
import thwartwise.checks.Role;
import thwartwise.checks.WaterInTheBilge;
import thwartwise.crew.Seating;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.inspection.PlainHulls;
import thwartwise.inspection.RedrawnBoats;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * Loose water, rain and the greatest pull of random dories with every measurement drawn anew,
 * computed after the boat as measured, against the same boat by itself with every search in full.
 * {@code -Dmoved.boats=100} tries more boats.
 */
class MovedBoatsTwoWaysTest {
  private static final RedrawnBoats OTHERWISE =
      new RedrawnBoats(new Span(0.75, 1.25), new Span(0.85, 1.2), 4, 25);

  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final int DRAWS = Integer.getInteger("moved.draws", 1);
  private static final int MOST = 2;

  /** Seeds of boats that loose water or a pull at the rail makes tender long before the rest. */
  private static final List<Long> TENDER = List.of(8L, 71L, 84L);

  static Stream<Long> seeds() {
    return Stream.concat(
        TENDER.stream(), new Random(1).longs(Integer.getInteger("moved.boats", 0)).boxed());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_moved_boat_has_the_figures_of_the_same_boat_by_itself(long seed) {
    Random random = new Random(seed);
    Boat boat = OTHERWISE.of(PlainHulls.dory(), random);
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    int room = boat.places().stream().mapToInt(Place::people).sum();
    List<SpreadInput> inputs =
        SpreadInputs.of(boat, model, RULES, RuleSetFile.measuringSpreads(), Set.of(), MOST);
    BalanceCache balances = new BalanceCache();
    List<CrewCase> crews = crews(boat, random);
    for (CrewCase crew : crews) {
      LoadedBoat measured = crew.aboard(model, Collections.nCopies(room, 1.0));
      readings(measured.remembering(balances).fromUpright());
    }
    for (int i = 0; i < DRAWS; i++) {
      double[] values = drawn(inputs, random.nextLong());
      VariedBoat moved = VariedBoat.asMeasured(boat, room).at(inputs, values);
      BoatModel movedModel = moved.model(boat, model);
      BalanceCache begun = balances.moved();
      for (CrewCase crew : crews) {
        LoadedBoat alone = crew.aboard(movedModel, moved.people());
        alike(readings(alone.remembering(begun)), readings(alone));
      }
    }
  }

  private static List<CheckReading> readings(LoadedBoat boat) {
    return Stream.<Check>of(
            new WaterInTheBilge(RULES), new RainAtTheMooring(RULES), new GreatestPull(RULES))
        .flatMap(check -> check.confirmedReadings(boat).stream())
        .toList();
  }

  private static void alike(List<CheckReading> found, List<CheckReading> expected) {
    assertThat(found).hasSameSizeAs(expected);
    for (int i = 0; i < found.size(); i++) {
      CheckReading one = expected.get(i);
      assertThat(found.get(i).question()).isEqualTo(one.question());
      assertThat(found.get(i).margin().room())
          .as(one.question() + " " + one.margin())
          .isCloseTo(
              one.margin().room(), within(1e-5 * Math.max(1, Math.abs(one.margin().limit()))));
    }
  }

  private static double[] drawn(List<SpreadInput> inputs, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return inputs.stream().mapToDouble(input -> input.distribution().draw(random)).toArray();
  }

  private static List<CrewCase> crews(Boat boat, Random random) {
    List<CrewCase> crews = new ArrayList<>();
    for (int people = 0; people <= MOST; people++) {
      List<Seating> seatings = Seating.of(people, boat.places());
      Seating seated = seatings.get(random.nextInt(seatings.size()));
      List<Double> masses = Collections.nCopies(people, 30 + 100 * random.nextDouble());
      crews.add(new CrewCase.SeatedCrew(seated, masses, Packing.SPREAD, Set.of(Role.INFORMATION)));
    }
    return crews;
  }
}
