package thwartwise.spread;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoatModel;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.PlainHulls;

class PredictionSpreadTest {

  /**
   * The square of a place known to s = 0.1 m is off by 2xs z + s² z² where the place is z spreads
   * off; the mean of the square of that is (2xs)² + 3 s⁴, since z³ is 0 and z⁴ 3 on average.
   * DERIVED.
   */
  @Test
  void what_first_order_leaves_out_is_added_as_its_mean_square() {
    BoatModel pram = BoatModel.of(PlainHulls.pram(), PlainHulls.TODAY);
    PredictionSpread spread =
        PredictionSpread.of(
            PlainHulls.pram(),
            pram,
            RuleSetFile.cautiousDefault(),
            RuleSetFile.measuringSpreads(),
            Set.of(),
            model -> new double[] {Math.pow(model.form().centre().x(), 2)});

    int along =
        IntStream.range(0, spread.sources().size())
            .filter(i -> spread.sources().get(i).kind() == InputKind.HULL_CENTRE_ALONG)
            .findFirst()
            .orElseThrow();
    double x = pram.form().centre().x();
    assertThat(spread.sources().get(along).moves().get(0)).isCloseTo(0.2 * x, within(1e-9));
    assertThat(Math.pow(spread.remainders().get(along).get(0), 2))
        .isCloseTo(3 * Math.pow(0.1, 4), within(1e-9));
  }
}
