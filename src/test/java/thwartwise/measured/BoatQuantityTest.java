package thwartwise.measured;

import static thwartwise.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class BoatQuantityTest {
  @Test
  void what_the_walk_takes_as_usual_a_boat_file_can_hold() {
    assertThat(Arrays.stream(BoatQuantity.values()).filter(BoatQuantity::isAsked))
        .isNotEmpty()
        .allSatisfy(
            q -> {
              assertThat(q.usualLeast()).isBetween(q.least(), q.usualMost());
              assertThat(q.usualMost()).isLessThanOrEqualTo(q.most());
            });
  }

  @Test
  void a_value_of_the_file_goes_into_si_and_back() {
    assertThat(BoatQuantity.BAILER_LITRES.si(4)).isEqualTo(0.004);
    assertThat(BoatQuantity.KILOWATTS.si(2.2)).isEqualTo(2200);
    assertThat(BoatQuantity.MINUTES.si(20)).isEqualTo(1200);
    assertThat(BoatQuantity.BAILER_LITRES.inFile(0.0861)).isEqualTo(86.1);
    assertThat(BoatQuantity.HULL_MASS.si(61)).isEqualTo(61);
  }
}
