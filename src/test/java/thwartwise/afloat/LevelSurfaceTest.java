package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;

/** The height at which a volume lies under a level surface, by wedges and blocks on paper. */
class LevelSurfaceTest {
  private static final Vector3 UPRIGHT = Vector3.of(0, 0, 1);

  /** A trough 3 m long whose breadth at a height is that height: 1.5 h2 under it. */
  private static final Lift TROUGH =
      new Lift(
          Blocks.prism(
              3, List.of(new double[] {0, 0}, new double[] {0.5, 1}, new double[] {-0.5, 1})),
          1);

  private static double height(List<Lift> solids, double volume, double guess) {
    return LevelSurface.find(solids, volume, UPRIGHT, guess, new Immersion())
        .orElseThrow()
        .plane()
        .height();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 0.3, 0.999, -5, 5, Double.NaN})
  void the_answer_does_not_depend_on_the_guess(double guess) {
    assertThat(height(List.of(TROUGH), 0.375, guess)).isCloseTo(0.5, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 1e-4, 0.1, 1.2, 1.4999})
  void a_trough_fills_as_the_square_of_its_depth(double volume) {
    ImmersedPart part =
        LevelSurface.find(List.of(TROUGH), volume, UPRIGHT, Double.NaN, new Immersion())
            .orElseThrow();
    assertThat(part.plane().height()).isCloseTo(Math.sqrt(volume / 1.5), within(1e-9));
    assertThat(part.volume()).isCloseTo(volume, within(1.001e-13 * Math.max(1, volume)));
  }

  // Two blocks with a gap of air between them: the slope vanishes where neither meets the surface.
  @Test
  void a_gap_between_two_blocks_is_stepped_over() {
    Lift low = new Lift(Blocks.block(1, 1, 0.2), 1);
    Lift tall = new Lift(Blocks.block(1, 1, 1), 1);
    Lift less = new Lift(Blocks.block(1, 1, 0.5), -1);
    List<Lift> solids = List.of(low, tall, less);
    assertThat(height(solids, 0.3, Double.NaN)).isCloseTo(0.6, within(1e-12));
    assertThat(height(solids, 0.1, 0.99)).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void a_volume_larger_than_all_has_no_surface() {
    assertThat(LevelSurface.find(List.of(TROUGH), 1.5001, UPRIGHT, 0.5, new Immersion())).isEmpty();
    assertThat(LevelSurface.find(List.of(TROUGH), Double.NaN, UPRIGHT, 0.5, new Immersion()))
        .isEmpty();
    assertThat(LevelSurface.find(List.of(), 0.1, UPRIGHT, 0.5, new Immersion())).isEmpty();
  }

  @Test
  void a_share_of_a_block_stands_as_much_higher() {
    List<Lift> half = List.of(new Lift(Blocks.block(2, 1, 1), 0.5));
    assertThat(height(half, 0.4, Double.NaN)).isCloseTo(0.4, within(1e-12));
  }

  // A large body is known as nearly as its own size allows: one part in 1e13.
  @Test
  void a_ship_is_levelled_as_well_as_a_tray() {
    List<Lift> ship = List.of(new Lift(Blocks.block(100, 20, 10), 1));
    assertThat(height(ship, 9192, Double.NaN)).isCloseTo(4.596, within(1e-12));
  }
}
