package thwartwise.proof;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.HullWeight;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.PlainHulls;
import thwartwise.proof.ProofComparison.LikelySlip;
import thwartwise.spread.InputKind;
import thwartwise.spread.PredictionSpread;

class ProofComparisonTest {
  private static final Boat BOAT = PlainHulls.skiff();
  private static final HullWeight STATED = FloatedSkiff.MODEL.hullWeight();

  private static ProofComparison of(FloatedPrediction readings, InputKind... better) {
    PredictionSpread spread =
        PredictionSpread.of(
            BOAT,
            FloatedSkiff.MODEL,
            RuleSetFile.cautiousDefault(),
            RuleSetFile.measuringSpreads(),
            Set.of(better),
            model -> readings.of(model).values(model.hullWeight()));
    return ProofComparison.of(readings, spread, RuleSetFile.measuringSpreads());
  }

  private static HullWeight heavier(double by) {
    return new HullWeight(STATED.mass() + by, STATED.along(), STATED.height());
  }

  @Test
  void a_boat_as_it_was_measured_agrees() {
    ProofComparison proof = of(FloatedSkiff.read(STATED, new Random(1)));

    assertThat(proof.agrees()).isTrue();
    assertThat(proof.off()).hasSize(8);
    assertThat(proof.spreads()).hasSize(8).allMatch(s -> s > 0);
  }

  /** What nobody measured well hides 30 kg: they are 10 mm of freeboard, and edges 20 mm off. */
  @Test
  void thirty_kilograms_hide_behind_edges_that_were_not_measured_well() {
    assertThat(of(FloatedSkiff.readWithoutError(heavier(30))).agrees()).isTrue();
  }

  @Test
  void a_hull_much_heavier_than_stated_does_not_agree_and_its_weight_is_named() {
    ProofComparison proof =
        of(
            FloatedSkiff.readWithoutError(heavier(60)),
            InputKind.EDGE_HEIGHTS,
            InputKind.BOTTOM_HEIGHTS,
            InputKind.HALF_BREADTHS,
            InputKind.HULL_CENTRE_ALONG,
            InputKind.HULL_CENTRE_HEIGHT);

    assertThat(proof.agrees()).isFalse();
    LikelySlip slip = proof.likeliest().orElseThrow();
    assertThat(slip.kind()).isEqualTo(InputKind.HULL_MASS);
    assertThat(slip.bySpreads()).isPositive();
  }

  /** Sums of squares of normal quantities, 97.5 %: 7.378, 17.535, 20.483 (tables, FROM MEMORY). */
  @Test
  void the_limit_is_that_of_the_tables() {
    assertThat(ProofComparison.limit(2)).isCloseTo(7.378, within(0.06));
    assertThat(ProofComparison.limit(8)).isCloseTo(17.535, within(0.03));
    assertThat(ProofComparison.limit(10)).isCloseTo(20.483, within(0.03));
  }
}
