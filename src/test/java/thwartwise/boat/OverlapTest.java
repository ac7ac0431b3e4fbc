package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.sampleboats.OrdinaryBoats;

/** What a box shares with a boat, against cutting every solid of the boat whole. */
class OverlapTest {
  private static final int BOXES = 150;

  static Stream<Boat> boats() {
    return OrdinaryBoats.all().stream().filter(b -> !b.chambers().isEmpty()).limit(5);
  }

  @ParameterizedTest
  @MethodSource("boats")
  void a_box_shares_what_cutting_every_solid_of_the_boat_shows(Boat boat) {
    BoatModel model = BoatModel.of(boat, OrdinaryBoats.TODAY);
    Box hull = model.form().shellOutside().boundingBox();
    Random random = new Random(20261127);
    int chambers = 0;
    int shell = 0;
    int free = 0;
    for (int i = 0; i < BOXES; i++) {
      Box box = new Box(post(hull.x(), random), post(hull.y(), random), post(hull.z(), random));
      Overlap overlap = Overlap.of(model, box);
      for (Space space : model.spaces()) {
        Solid common = space.solid().within(box);
        alike(overlap.withSpaces().getOrDefault(space, Solid.EMPTY), common);
        chambers += overlap.withSpaces().containsKey(space) ? 1 : 0;
      }
      double between =
          model.form().shellOutside().within(box).volume()
              - model.form().shellInside().within(box).volume();
      double found = overlap.shellOutside().volume() - overlap.shellInside().volume();
      assertThat(found).isCloseTo(between, within(Overlap.NEGLIGIBLE));
      assertThat(overlap.touchesShell()).isEqualTo(between > Overlap.NEGLIGIBLE);
      shell += overlap.touchesShell() ? 1 : 0;
      free += overlap.touchesShell() ? 0 : 1;
    }
    assertThat(chambers).isPositive();
    assertThat(shell).isGreaterThan(BOXES / 10);
    assertThat(free).isGreaterThan(BOXES / 10);
  }

  private static void alike(Solid found, Solid common) {
    if (common.volume() > Overlap.NEGLIGIBLE) {
      assertThat(found.volume()).isCloseTo(common.volume(), within(1e-12));
      assertThat(found.moment().minus(common.moment()).norm()).isCloseTo(0, within(1e-12));
    } else {
      assertThat(found.triangleCount()).isZero();
    }
  }

  private static Span post(Span along, Random random) {
    double middle = along.from() + along.length() * random.nextDouble();
    double half = 0.1 + 0.1 * random.nextDouble();
    return new Span(middle - half, middle + half);
  }
}
