package thwartwise.crew;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Loading;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.PlainHulls;
import thwartwise.rules.RuleSet;

/** How much may be carried besides people. */
class LoadSearchTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final int SAMPLES = 60;

  static Stream<Arguments> boats() {
    return Stream.of(
        Arguments.of(PlainHulls.pram(), 1),
        Arguments.of(PlainHulls.skiff(), 1),
        Arguments.of(PlainHulls.dory(), 2));
  }

  private static int extra(CrewAssessment judge, List<Seating> seatings) {
    return new LoadSearch(judge, seatings, 95).extra();
  }

  private static boolean carries(CrewAssessment judge, Seating seating, Loading.Weight extra) {
    return judge.loadedBoats(seating, 95).stream()
        .allMatch(trial -> judge.meets(trial.with(extra)));
  }

  private static List<Seating> seatings(CrewAssessment judge, int people) {
    return new CrewSearch(judge, RULES).seatings(people, 95);
  }

  // The pram was told 84 kg and turned over with 63 at either end. Whole kilograms and spots every
  // five centimetres, thrown by dice: the search itself tries few.
  @ParameterizedTest
  @MethodSource("boats")
  void every_weight_up_to_the_limit_is_carried_anywhere_on_the_floor(Boat boat, int people) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    CrewAssessment judge = new CrewAssessment(model, RULES);
    List<Seating> seatings = seatings(judge, people);
    int extra = extra(judge, seatings);
    assertThat(extra).isPositive();
    Random random = new Random(20261126);
    int steps = (int) (0.84 * model.form().length() / 0.05);
    for (int i = 0; i < SAMPLES; i++) {
      Seating seating = seatings.get(random.nextInt(seatings.size()));
      double x = 0.08 * model.form().length() + 0.05 * random.nextInt(steps);
      Vector3 at = Vector3.of(x, 0, boat.hull().floor());
      int mass = 1 + random.nextInt(extra);
      assertThat(carries(judge, seating, new Loading.Weight(mass, at)))
          .as("%d kg at %.2f m, %s", mass, x, seating.places(model))
          .isTrue();
    }
  }

  // Before, the floor under such a box was left out of the spots tried: the dory's extra went from
  // 174 to 187 kg when a leaking box was put into its stern.
  @ParameterizedTest
  @MethodSource("boats")
  void a_box_that_counts_for_nothing_never_raises_the_limit(Boat boat, int people) {
    CrewAssessment plain = new CrewAssessment(BoatModel.of(boat, PlainHulls.TODAY), RULES);
    List<Seating> seatings = seatings(plain, people);
    int without = extra(plain, seatings);
    int tried = 0;
    for (Box box : boxes(plain.model())) {
      List<Chamber> more = new ArrayList<>(boat.chambers());
      Filling leaky = new Filling.Air(Seal.CLAIMED, Optional.empty());
      more.add(new Chamber("leaky", box, leaky, Optional.empty(), false));
      Optional<BoatModel> model = built(boat.withChambers(more));
      if (model.isPresent()) {
        tried++;
        assertThat(extra(new CrewAssessment(model.get(), RULES), seatings))
            .isLessThanOrEqualTo(without);
      }
    }
    assertThat(tried).isPositive();
  }

  /** Low boxes at both ends and in the middle, those that find room beside what is there. */
  private static List<Box> boxes(BoatModel model) {
    double length = model.form().length();
    return Stream.of(new Span(0, 0.2), new Span(0.3, 0.45), new Span(0.6, 0.72))
        .map(s -> new Span(s.from() * length, s.to() * length))
        .map(along -> new Box(along, Span.ALL, new Span(0, 0.12)))
        .toList();
  }

  private static Optional<BoatModel> built(Boat boat) {
    try {
      return Optional.of(BoatModel.of(boat, PlainHulls.TODAY));
    } catch (thwartwise.hull.UnusableBoat overlapping) {
      return Optional.empty();
    }
  }
}
