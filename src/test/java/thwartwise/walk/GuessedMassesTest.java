package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;

/** A guess typed in the walk widens what is guessed by itself; nobody is asked for it. */
class GuessedMassesTest {
  @Test
  void a_hull_that_was_guessed_says_so_and_one_that_was_weighed_says_nothing() {
    assertThat(Sheet.full(true).boat().methods())
        .noneMatch(m -> m.kind() == MeasurementKind.HULL_WEIGHT);
    assertThat(Sheet.full(true).with("hull.mass", "guess 60 kg").boat().methods())
        .contains(
            new MeasuringMethod(MeasurementKind.HULL_WEIGHT, Optional.empty(), MeasuringWay.GUESS));
  }
}
