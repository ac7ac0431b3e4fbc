package thwartwise.loadcase;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.afloat.Pose;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * Swamped boats with a loose anchor to one side and random crews, who move over to either side: the
 * loading with the anchor as listed, where it is left out, against the one with the anchor slid.
 */
class OutdoneSwampedTest {
  private static final List<Place> SEATS =
      List.of(new Place("thwart", 1.6, 0.25, 0.45, 2), new Place("stern seat", 0.7, 0.3, 0.4, 2));

  private static BoatModel boat(double anchor, Span tank) {
    return BoxBoat.of(3.2, 1.4, 0.5)
        .hull(90, 0.2)
        .proven("stern tank", tank)
        .proven("bow tank", new Span(2.4, 3.2))
        .kit(
            new Kit(
                "anchor",
                anchor,
                Vector3.of(2, 0.2, 0.05),
                Optional.empty(),
                false,
                Optional.empty()))
        .model();
  }

  private static LoadedBoat crewed(BoatModel model, Random random) {
    List<Body> crew = new ArrayList<>();
    for (Place seat : SEATS) {
      if (crew.isEmpty() || random.nextBoolean()) {
        double y = 0.8 * (random.nextDouble() - 0.5);
        crew.add(Body.seated("crew", 8 + 50 * random.nextDouble(), seat, y, 0.05));
      }
    }
    return LoadedBoat.of(model, crew);
  }

  @Test
  void a_loading_left_out_heels_less_than_the_one_with_the_kit_slid() {
    Random random = new Random(20261127);
    int leftOut = 0;
    int asked = 0;
    for (int i = 0; i < 24; i++) {
      BoatModel model = boat(5 + 15 * (i % 3), i % 2 == 0 ? new Span(0, 0.8) : new Span(0, 0.5));
      LoadedBoat whole = crewed(model, random);
      LoadedBoat before = whole.hurried();
      List<LoadedBoat> ways = PeopleMoves.partly(before, 0.5, 0.6);
      List<LoadedBoat> full = PeopleMoves.partly(whole, 0.5, 0.6);
      for (int side = 0; side < ways.size(); side += 2) {
        assertThat(ways.get(side).isOutdoneSwamped(before)).isFalse();
        asked++;
        if (ways.get(side + 1).isOutdoneSwamped(before)) {
          leftOut++;
          assertThat(farthest(full.get(side + 1))).isLessThanOrEqualTo(farthest(full.get(side)));
        }
      }
    }
    assertThat(asked).isEqualTo(48);
    assertThat(leftOut).isBetween(20, 44);
  }

  // 20 kg at 0.2 m to port against 80 kg that come to y / 2 - 0.135 m, 0.0501 and 0.06 m to
  // starboard: all weights 0.04 and 4 mm off the middle line.
  @Test
  void weights_nearly_on_the_middle_line_may_balance_on_a_knifes_edge() {
    assertThat(isListedOutdone(0.1698)).isFalse();
    assertThat(isListedOutdone(0.15)).isTrue();
  }

  /** To starboard, with somebody who sits above the water, so far to port at first. */
  private static boolean isListedOutdone(double y) {
    Place high = new Place("high seat", 1.6, 0.45, 0.45, 1);
    Body crew = Body.seated("crew", 80, high, y, 0.44);
    LoadedBoat before = LoadedBoat.of(boat(20, new Span(0, 0.8)), List.of(crew)).hurried();
    return PeopleMoves.partly(before, 0.5, 0.6).get(3).isOutdoneSwamped(before);
  }

  /** The greatest angle from upright at which it rests; a boat that does not is over. */
  private static double farthest(LoadedBoat way) {
    return way.swampedRest(List.of()).worst().map(Pose::tilt).orElse(Math.PI);
  }
}
