package thwartwise.proof;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.boat.HullWeight;

/** Made boats, read with known errors: the fit finds what they weigh and where. */
class HullFitTest {
  private static final HullWeight STATED = FloatedSkiff.MODEL.hullWeight();

  private static HullWeight off(double mass, double along, double height) {
    return new HullWeight(STATED.mass() + mass, STATED.along() + along, STATED.height() + height);
  }

  private static HullFit fit(FloatedPrediction readings, HullWeight mayBeOff) {
    return HullFit.of(readings, mayBeOff).orElseThrow();
  }

  /** Hardly anything was known before, so that the readings decide: within a hundredth of that. */
  @Test
  void readings_without_error_give_the_true_hull_back() {
    HullWeight truth = off(15, 0.12, 0.10);
    HullFit found = fit(FloatedSkiff.readWithoutError(truth), new HullWeight(200, 2, 2));

    assertThat(found.fitted().mass()).isCloseTo(truth.mass(), within(0.15));
    assertThat(found.fitted().along()).isCloseTo(truth.along(), within(0.002));
    assertThat(found.fitted().height()).isCloseTo(truth.height(), within(0.01));
    assertThat(found.massHeld()).isFalse();
    assertThat(found.misfits()).hasSize(8).allMatch(m -> Math.abs(m) < 0.1);
  }

  @Test
  void a_boat_as_stated_is_left_as_it_is() {
    HullFit found = fit(FloatedSkiff.readWithoutError(STATED), new HullWeight(3, 0.1, 0.05));

    assertThat(found.fitted().mass()).isCloseTo(STATED.mass(), within(1e-6));
    assertThat(found.fitted().height()).isCloseTo(STATED.height(), within(1e-6));
    assertThat(found.stated()).isEqualTo(STATED);
  }

  @Test
  void the_mass_is_not_corrected_by_more_than_its_own_spread() {
    HullFit found = fit(FloatedSkiff.readWithoutError(off(40, 0, 0)), new HullWeight(3, 0.1, 0.05));

    assertThat(found.fitted().mass()).isCloseTo(STATED.mass() + 3, within(1e-6));
    assertThat(found.massHeld()).isTrue();
  }

  /**
   * Forty boats that differ from what was stated by what that may be off, each read with errors:
   * within two of the spreads told lie 95.4 % of a normal quantity, 38.2 of 40; fewer than 35 comes
   * once in fifty such tests. The readings leave less than was unsure before.
   */
  @Test
  void the_spreads_told_hold_the_true_hull() {
    Random random = new Random(20);
    HullWeight mayBeOff = new HullWeight(12, 0.10, 0.08);
    int mass = 0;
    int along = 0;
    int height = 0;
    for (int i = 0; i < 40; i++) {
      HullWeight truth =
          off(
              Math.max(-11.9, Math.min(11.9, 6 * random.nextGaussian())),
              mayBeOff.along() * random.nextGaussian(),
              mayBeOff.height() * random.nextGaussian());
      HullFit found = fit(FloatedSkiff.read(truth, random), mayBeOff);
      HullWeight spreads = found.spreads();
      mass += inTwoSpreads(found.fitted().mass() - truth.mass(), spreads.mass());
      along += inTwoSpreads(found.fitted().along() - truth.along(), spreads.along());
      height += inTwoSpreads(found.fitted().height() - truth.height(), spreads.height());
      assertThat(spreads.mass()).isLessThan(mayBeOff.mass());
      assertThat(spreads.along()).isLessThan(mayBeOff.along());
      assertThat(spreads.height()).isLessThan(mayBeOff.height());
    }
    assertThat(mass).isGreaterThanOrEqualTo(35);
    assertThat(along).isGreaterThanOrEqualTo(35);
    assertThat(height).isGreaterThanOrEqualTo(35);
  }

  private static int inTwoSpreads(double off, double spread) {
    return Math.abs(off) <= 2 * spread ? 1 : 0;
  }

  @Test
  void a_boat_that_sinks_has_no_fit() {
    assertThat(HullFit.of(FloatedSkiff.loadedWith(5000), new HullWeight(3, 0.1, 0.05))).isEmpty();
  }
}
