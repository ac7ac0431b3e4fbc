package thwartwise.hull;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.sampleboats.OrdinaryBoats;

/** Boxes cut out of slices of a hull against the same boxes cut out of the whole of it. */
class SlicesTest {
  private static final int BOXES = 60;

  static Stream<Boat> boats() {
    return OrdinaryBoats.all().stream().limit(4);
  }

  @ParameterizedTest
  @MethodSource("boats")
  void a_box_is_the_same_part_of_a_slice_as_of_the_whole(Boat boat) {
    Solid hull = BoatModel.of(boat, OrdinaryBoats.TODAY).form().shellOutside();
    Slices slices = new Slices(hull);
    Random random = new Random(20261126);
    int met = 0;
    for (int i = 0; i < BOXES; i++) {
      // Every third begins where a slice does.
      double x = i % 3 == 0 ? 0.25 * random.nextInt(10) : 2.5 * random.nextDouble();
      double y = random.nextDouble() - 0.7;
      double z = 0.3 * random.nextDouble();
      Box box = new Box(new Span(x, x + 0.4), new Span(y, y + 0.4), new Span(z, z + 0.3));
      Solid whole = hull.within(box);
      Solid part = slices.within(box);
      assertThat(part.volume()).isCloseTo(whole.volume(), within(1e-12));
      assertThat(part.moment().minus(whole.moment()).norm()).isCloseTo(0, within(1e-12));
      met += whole.volume() > 1e-3 ? 1 : 0;
    }
    assertThat(met).isGreaterThan(BOXES / 3);
  }
}
