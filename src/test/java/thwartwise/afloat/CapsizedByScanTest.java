package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** Turning a swamped boat back from upside down. */
class CapsizedByScanTest {
  private static FloatingBody on(Solid solid, double mass, double y, double z) {
    return new FloatingBody(mass, Vector3.of(0, y, z), List.of(new Lift(solid, 1)), 1000);
  }

  @Test
  void what_sinks_is_not_turned_back() {
    CapsizedBoat capsized = CapsizedBoat.of(on(Blocks.block(1, 1, 1), 1000, 0, 0.2));
    assertThat(capsized).isEqualTo(new CapsizedBoat(OptionalDouble.empty(), false, true));
  }

  // A block of air along the middle under the rail: upside down G hangs 0.7 m over the water's
  // side of it, and KM is but 0.025 + 0.3^2 / (12 x 0.05) = 0.175 m.
  @Test
  void a_boat_with_its_chamber_high_up_rolls_back_by_itself() {
    BoxBoat boat =
        BoxBoat.of(4, 1, 0.8)
            .hull(60, 0.1)
            .weightlessShell()
            .proven("high", new Span(0, 4), new Span(-0.15, 0.15), new Span(0.5, 0.8));
    Loading alone = new Loading(boat.model(), List.of(), List.of(), 1);
    CapsizedBoat capsized = CapsizedBoat.of(Swamping.of(alone, 1).floating(List.of()));
    assertThat(capsized.effort().orElseThrow()).isCloseTo(0, within(1e-6));
    assertThat(capsized.staysUp()).isTrue();
    assertThat(capsized.assessed()).isTrue();
  }

  // A bar 0.3 m square at the bottom with G 0.3 m over its top: it lies upside down. The greatest
  // moment is looked for again, a degree at a time and each from level trim.
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.04, -0.04})
  void a_boat_stable_upside_down_takes_the_greatest_moment_of_the_easier_way(double y) {
    FloatingBody boat = on(Blocks.block(4, 0.3, 0.3), 180, y, 0.6);
    CapsizedBoat capsized = CapsizedBoat.of(boat);
    double least = Math.min(most(boat, 1), most(boat, -1));
    assertThat(least).isGreaterThan(500);
    assertThat(capsized.effort().orElseThrow()).isCloseTo(least, within(1e-3 * least));
    assertThat(capsized.staysUp()).isFalse();
    assertThat(capsized.assessed()).isTrue();
  }

  @Test
  void a_boat_and_its_mirror_image_take_the_same() {
    Solid bar = Blocks.block(4, 0.3, 0.3);
    double port = CapsizedBoat.of(on(bar, 180, 0.04, 0.6)).effort().orElseThrow();
    double starboard = CapsizedBoat.of(on(bar, 180, -0.04, 0.6)).effort().orElseThrow();
    assertThat(port).isCloseTo(starboard, within(1e-6 * port));
  }

  private static double most(FloatingBody boat, int side) {
    double most = 0;
    for (int degree = 180; degree >= 0; degree--) {
      HeldHeel held =
          TrimBalance.at(boat, side * Math.toRadians(degree), 0, 0, new Immersion()).orElseThrow();
      most = Math.max(most, -side * held.heelMoment());
    }
    return most * 1000 * Gravity.STANDARD;
  }
}
