package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Unit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;

/** A figure and its limit, where it is told that the one is too near the other. */
class MarginWordsTest {
  // Inch 0.0254 m, pound 0.45359237 kg (exact): 0.2 m are 7.874 in, 0.205 m 8.071 in, 0.4059 m
  // 15.980 in, 0.40665 m 16.0098 in; 26.9 kg are 59.304 lb, 27.3 kg 60.186 lb. DERIVED; what the
  // boat
  // has is rounded down, what it needs up.
  @ParameterizedTest
  @CsvSource({
    "METRE, METRIC, 0.205, 0.2, true, 0.205 m, 0.200 m",
    "METRE, METRIC, 0.2003, 0.2, true, 0.2003 m, 0.2000 m",
    "METRE, METRIC, 0.195, 0.2, true, 0.19 m, 0.20 m",
    "METRE, FEET_INCHES_POUNDS, 0.205, 0.2, true, 8.0 in, 7.9 in",
    "METRE, FEET_INCHES_POUNDS, 0.40665, 0.4059, true, 1 ft 4.00 in, 1 ft 3.99 in",
    "KILOGRAM, METRIC, 27.3, 26.9, true, 27.3 kg, 26.9 kg",
    "KILOGRAM, FEET_INCHES_POUNDS, 27.3, 26.9, true, 60.1 lb, 59.4 lb",
    "DEGREE, METRIC, 0.52, 0.5236, false, 29.8°, 30.0°"
  })
  void shown_alike_they_get_one_more_figure_until_they_differ(
      Unit unit,
      UnitSystem system,
      double value,
      double limit,
      boolean least,
      String shown,
      String needed) {
    Margin margin = new Margin(OptionalDouble.of(value), limit, least, unit);
    UnitFormat units = MarginWords.distinguishing(margin, new UnitFormat(system));
    assertThat(MarginWords.value(margin, units).replace('\u00a0', ' ')).isEqualTo(shown);
    assertThat(MarginWords.limit(margin, units).replace('\u00a0', ' ')).isEqualTo(needed);
  }

  @Test
  void a_figure_that_is_its_limit_is_shown_as_coarse_as_ever() {
    Margin margin = Margin.atLeast(0.2, OptionalDouble.of(0.2), Unit.METRE);
    assertThat(MarginWords.distinguishing(margin, UnitFormat.METRIC)).isEqualTo(UnitFormat.METRIC);
  }

  /** 24,105 minutes are 16.7 days; what the boat has is rounded down, what it needs up. */
  @ParameterizedTest
  @CsvSource({
    "599, true, 9 minutes",
    "10799, true, 179 minutes",
    "10800, true, 3 hours",
    "20000, false, 6 hours",
    "1446300, true, 16 days",
    "1446300, false, 17 days",
    "Infinity, true, without end"
  })
  void a_long_time_is_told_in_hours_or_days(double seconds, boolean least, String shown) {
    Margin margin = new Margin(OptionalDouble.of(seconds), 600, least, Unit.MINUTE);
    assertThat(MarginWords.value(margin, UnitFormat.METRIC).replace('\u00a0', ' '))
        .isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "FREEBOARD, -0.914, true, 0.92 m under the water",
    "FREEBOARD, 0.914, true, 0.91 m",
    "LOWER_END, -0.914, false, 0.91 m above the water",
    "LOWER_END, 0.1, false, 0.10 m",
    "DISTANCE, -0.914, true, -0.92 m"
  })
  void a_height_below_zero_says_where_it_is(
      Measure measure, double metres, boolean least, String shown) {
    Margin margin = new Margin(OptionalDouble.of(metres), 0.1, least, Unit.METRE);
    assertThat(MarginWords.ofTheWater(measure, margin, UnitFormat.METRIC).replace('\u00a0', ' '))
        .isEqualTo(shown);
  }
}
