package thwartwise.spread;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.HullWeight;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.Distribution.Lognormal;
import thwartwise.uncertainty.Distribution.Normal;

/**
 * What two proofs afloat leave of the spread of the hull's weight and centre, and of nothing else.
 */
class SpreadInputTest {
  /** One standard deviation each that the proofs left: 2 kg, 0.03 m along and 0.01 m up. */
  private static final Optional<HullWeight> LEFT = Optional.of(new HullWeight(2, 0.03, 0.01));

  private static SpreadInput input(InputKind kind, Distribution distribution) {
    return new SpreadInput(
        kind, "", distribution, distribution.standardDeviation() / 2, (boat, value) -> boat);
  }

  @Test
  void a_proved_mass_stays_where_it_is_and_is_off_by_what_the_proofs_left() {
    SpreadInput proved = input(InputKind.HULL_MASS, Lognormal.of(60, 5)).proved(LEFT);
    assertThat(proved.distribution().mean()).isCloseTo(60, within(1e-9));
    assertThat(proved.spread()).isCloseTo(2, within(1e-9));
    assertThat(proved.betterSpread()).isEqualTo(2);
    assertThat(proved.left()).isCloseTo(1, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"HULL_CENTRE_ALONG, 0.03", "HULL_CENTRE_HEIGHT, 0.01"})
  void so_is_its_centre(InputKind kind, double left) {
    assertThat(input(kind, new Normal(1.7, 0.1)).proved(LEFT).spread()).isEqualTo(left);
  }

  @Test
  void a_proof_never_makes_a_measurement_poorer() {
    SpreadInput weighed = input(InputKind.HULL_MASS, Lognormal.of(60, 1.2));
    assertThat(weighed.proved(LEFT)).isSameAs(weighed);
  }

  @Test
  void what_was_bettered_already_stays_better() {
    SpreadInput input = input(InputKind.HULL_MASS, Lognormal.of(60, 3));
    assertThat(input.proved(LEFT).betterSpread()).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void without_two_proofs_and_of_anything_else_nothing_is_narrowed() {
    SpreadInput mass = input(InputKind.HULL_MASS, Lognormal.of(60, 5));
    assertThat(mass.proved(Optional.empty())).isSameAs(mass);
    for (InputKind kind : new InputKind[] {InputKind.SCALES, InputKind.KIT_MASS, InputKind.TAPE}) {
      SpreadInput other = input(kind, new Normal(60, 5));
      assertThat(other.proved(LEFT)).as(kind.name()).isSameAs(other);
    }
  }
}
