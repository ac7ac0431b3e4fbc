package thwartwise.page;

import static thwartwise.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HundredthsTest {
  @ParameterizedTest
  @ValueSource(
      doubles = {
        0,
        -0.0,
        0.004,
        -0.004,
        0.005,
        0.125,
        -0.125,
        1.005,
        1.015,
        2.675,
        -2.675,
        0.995,
        99.995,
        99.9949999,
        1e11,
        1e15,
        1.7e308,
        -5e-324,
        Double.NaN,
        Double.POSITIVE_INFINITY
      })
  void it_is_what_the_formatter_gives(double number) {
    assertThat(written(number)).isEqualTo(String.format(Locale.ROOT, "%.2f", number));
  }

  @Test
  void it_is_what_the_formatter_gives_for_numbers_nobody_chose() {
    Random random = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      // Every other one has three decimals, so that many lie in the middle between two.
      double thousandths = Math.rint(random.nextGaussian() * 200_000) / 1000;
      double number = i % 2 == 0 ? thousandths : random.nextGaussian() * 500;
      assertThat(written(number)).isEqualTo(String.format(Locale.ROOT, "%.2f", number));
    }
  }

  private static String written(double number) {
    StringBuilder written = new StringBuilder();
    Hundredths.append(number, written);
    return written.toString();
  }
}
