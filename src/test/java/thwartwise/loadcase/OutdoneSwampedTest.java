package thwartwise.loadcase;

import static org.assertj.core.api.Assertions.assertThat;

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

  /** The greatest angle from upright at which it rests; a boat that does not is over. */
  private static double farthest(LoadedBoat way) {
    return way.swampedRest(List.of()).worst().map(Pose::tilt).orElse(Math.PI);
  }
}
