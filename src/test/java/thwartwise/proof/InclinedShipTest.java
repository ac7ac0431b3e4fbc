package thwartwise.proof;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Side;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Reference;
import thwartwise.proof.ProofReading.FreeboardReading;
import thwartwise.proof.ProofReading.HeelReading;

/** Published inclining experiments and rolling periods. */
class InclinedShipTest {

  static Stream<Reference> inclined() {
    return Reference.of("inclining");
  }

  @ParameterizedTest
  @MethodSource("inclined")
  void a_weight_moved_across_tells_the_metacentric_height(Reference row) {
    Inclining inclining = new Inclining(row.in("w"), row.in("d"), row.in("W"));
    HeelReading heel = HeelReading.ofPendulum(row.in("length"), row.in("deflection"), 0.001);

    double found = inclining.metacentricHeight(Math.tan(heel.value()));
    assertThat(found).isCloseTo(row.wanted("GM"), within(row.near("GM")));
    assertThat(inclining.tangent(found)).isCloseTo(Math.tan(heel.value()), within(1e-12));
  }

  static Stream<Reference> rolls() {
    return Reference.of("roll-period");
  }

  @ParameterizedTest
  @MethodSource("rolls")
  void the_time_of_a_roll_follows_from_radius_and_metacentric_height(Reference row) {
    assertThat(RollPeriod.of(row.in("k"), row.in("GM")))
        .isCloseTo(row.wanted("T"), within(row.near("T")));
  }

  @Test
  void the_radius_of_the_default_set_is_that_of_the_published_factor() {
    Reference row = Reference.named("A14-fishing");
    double radius = RuleSetFile.cautiousDefault().value("roll-radius");

    assertThat(radius).isEqualTo(row.in("k"));
    assertThat(RollPeriod.factor(radius)).isCloseTo(row.wanted("f"), within(row.near("f")));
  }

  /** Both published forms are one: what the period says comes back. DERIVED. */
  @Test
  void the_metacentric_height_comes_back_from_the_time_of_a_roll() {
    double period = RollPeriod.of(0.4 * 1.3, 0.62);
    assertThat(RollPeriod.metacentricHeight(RollPeriod.factor(0.4), 1.3, period))
        .isCloseTo(0.62, within(1e-12));
  }

  @Test
  void a_boat_that_does_not_come_back_has_no_time_of_a_roll() {
    assertThat(RollPeriod.of(0.5, 0)).isNaN();
    assertThat(RollPeriod.of(0.5, Double.NaN)).isNaN();
  }

  /** Rails 0.30 and 0.20 m above the water, 1.2 m apart: sin heel = 0.1/1.2. DERIVED. */
  @Test
  void both_rails_tell_the_heel() {
    HeelReading heel = HeelReading.ofRails(0.30, 0.20, 1.2, 0.002);

    assertThat(heel.value()).isCloseTo(Math.asin(0.1 / 1.2), within(1e-12));
    // 2 mm at each end of 1.2 m: 2.4 mrad.
    assertThat(heel.spread()).isCloseTo(0.00236, within(0.00002));
  }

  @Test
  void refuses_what_is_no_reading() {
    assertThatThrownBy(() -> new HeelReading(Double.NaN, 0.01))
        .hasMessage("A reading must be finite: NaN.");
    assertThatThrownBy(() -> new FreeboardReading(0, Side.PORT, 0.3, Double.NaN))
        .hasMessage("The spread of a reading must be above 0: NaN.");
  }
}
