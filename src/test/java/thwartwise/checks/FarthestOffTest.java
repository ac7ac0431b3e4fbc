package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.FarthestOff;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;

/**
 * A boat alike on both sides, with a loose anchor to one side and a crew thrown by dice: each way
 * of moving asked by itself, against those alone whose weights lie farthest off the middle line.
 */
class FarthestOffTest {
  private static final BoatModel MODEL =
      BoxBoat.of(3, 1.3, 0.5)
          .hull(90, 0.2)
          .proven("stern tank", new Span(0, 0.45))
          .proven("bow tank", new Span(2.3, 3))
          .kit(
              new Kit(
                  "anchor",
                  20,
                  Vector3.of(2, 0.3, 0.05),
                  Optional.empty(),
                  false,
                  Optional.empty()))
          .model();

  /** Chambers that reach the side, and others that nearly meet on the middle line. */
  private static final BoatModel TWINS =
      BoxBoat.of(3, 1.3, 0.5)
          .hull(90, 0.2)
          .chamber(twins("side tank", new Span(0.1, 0.9), new Span(0.3, 0.65)))
          .chamber(twins("locker", new Span(2, 2.8), new Span(0.01, 0.4)))
          .kit(
              new Kit(
                  "anchor",
                  20,
                  Vector3.of(1.2, 0.3, 0.05),
                  Optional.empty(),
                  false,
                  Optional.empty()))
          .model();

  private static Chamber twins(String name, Span x, Span y) {
    Chamber drawn = BoxBoat.proven(name, new Box(x, y, new Span(0, 0.4)), Optional.empty());
    return new Chamber(name, drawn.box(), drawn.filling(), Optional.empty(), true);
  }

  private static final Place THWART = new Place("thwart", 1.6, 0.25, 0.45, 2);

  private static LoadedBoat crewed(Random random) {
    return crewed(MODEL, random);
  }

  private static LoadedBoat crewed(BoatModel model, Random random) {
    List<Body> crew = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(2); i++) {
      double y = 0.6 * (random.nextDouble() - 0.5);
      crew.add(Body.seated("crew " + i, 25 + 70 * random.nextDouble(), THWART, y, 0.05));
    }
    return LoadedBoat.of(model, crew);
  }

  @Test
  void what_lies_farthest_off_the_middle_is_the_worst_of_all() {
    Random random = new Random(20261127);
    int leftOut = 0;
    for (int i = 0; i < 6; i++) {
      LoadedBoat boat = crewed(random);
      for (List<LoadedBoat> ways :
          List.of(
              PeopleMoves.everyone(boat, 0.6, Act.EVERYONE_PART_OF_THE_WAY),
              PeopleMoves.standing(boat),
              holed(boat))) {
        leftOut += ways.size() - FarthestOff.of(ways).size();
        assertThat(worst(FarthestOff.of(ways))).isCloseTo(worst(ways), within(1e-9));
      }
    }
    assertThat(leftOut).isGreaterThan(40);
  }

  @Test
  void water_in_a_twin_is_worst_with_the_weights_on_its_own_side() {
    Random random = new Random(20261127);
    int leftOut = 0;
    for (int i = 0; i < 6; i++) {
      LoadedBoat boat = crewed(TWINS, random);
      for (int twins : List.of(0, 2)) {
        List<LoadedBoat> ways = new ArrayList<>(holed(boat, TWINS.spaces().get(twins)));
        ways.addAll(holed(boat, TWINS.spaces().get(twins + 1)));
        leftOut += ways.size() - FarthestOff.of(ways).size();
        assertThat(worst(FarthestOff.of(ways))).isCloseTo(worst(ways), within(1e-9));
      }
    }
    assertThat(leftOut).isGreaterThan(80);
  }

  @Test
  void weights_farther_out_on_the_side_away_from_the_water_are_kept() {
    Space starboard = TWINS.spaces().get(1);
    List<LoadedBoat> ways =
        Stream.of(0.2, 0.3)
            .map(y -> LoadedBoat.of(TWINS, List.of(Body.seated("crew", 90, THWART, y, 0.05))))
            .map(boat -> ChamberHoled.halfFull(boat, starboard))
            .toList();
    assertThat(starboard.box().y().to()).isNegative();
    assertThat(FarthestOff.of(ways)).isEqualTo(ways);
  }

  private static List<LoadedBoat> holed(LoadedBoat boat) {
    return holed(boat, MODEL.spaces().get(0));
  }

  private static List<LoadedBoat> holed(LoadedBoat boat, Space space) {
    LoadedBoat holed = ChamberHoled.halfFull(boat, space);
    List<LoadedBoat> ways = new ArrayList<>(List.of(holed));
    ways.addAll(PeopleMoves.everyone(holed, 0.6, Act.EVERYONE_PART_OF_THE_WAY));
    return ways;
  }

  /** The least room of heel and freeboard; a boat that rolls over has none. */
  private static double worst(List<LoadedBoat> ways) {
    return ways.stream()
        .flatMap(
            way ->
                new HeelReadings(RULES)
                    .readings(CheckId.THREE_FIFTHS_TO_ONE_SIDE, List.of(way)).stream())
        .mapToDouble(reading -> Math.max(-1, reading.margin().room()))
        .min()
        .orElseThrow();
  }

  /** A way differs from another by more than that where a weight lies higher. */
  @Test
  void what_floats_otherwise_is_left_as_it_is() {
    LoadedBoat boat = crewed(new Random(1));
    List<LoadedBoat> higher =
        List.of(boat, boat.with(new Loading.Weight(5, Vector3.of(2, 0, 0.4))));
    assertThat(FarthestOff.of(higher)).isEqualTo(higher);
  }

  // A second weight opposite the anchor, then one to port or a picometre farther to starboard.
  @Test
  void of_two_ways_as_far_off_on_either_side_the_first_is_kept() {
    LoadedBoat even =
        LoadedBoat.of(MODEL, List.of()).with(new Loading.Weight(20, Vector3.of(2, -0.3, 0.05)));
    LoadedBoat port = even.with(new Loading.Weight(50, Vector3.of(1.5, 0.5, 0.2)));
    LoadedBoat starboard = even.with(new Loading.Weight(50, Vector3.of(1.5, -0.5 - 1e-12, 0.2)));
    assertThat(-starboard.loading().centre().y()).isGreaterThan(port.loading().centre().y());
    assertThat(FarthestOff.of(List.of(port, starboard))).containsExactly(port);
    assertThat(FarthestOff.of(List.of(starboard, port))).containsExactly(starboard);
  }
}
