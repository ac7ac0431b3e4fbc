package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadCase;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.page.RangeBar;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.FigureSpread;
import thwartwise.uncertainty.CoverageInterval;

class RangeWordsTest {
  private static final String TIED = UnitFormat.TIED;
  private static final CheckQuestion FREEBOARD =
      CheckQuestion.of(CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD);
  private static final CheckQuestion HEEL =
      CheckQuestion.of(CheckId.STIFF_OFF_THE_MIDDLE, Measure.HEEL);
  private static final Margin AS_MEASURED =
      Margin.atLeast(0.20, OptionalDouble.of(0.2449), Unit.METRE);

  private static RangeWords words(UnitFormat units, FigureSpread... figures) {
    BoatSpread spread =
        new BoatSpread(
            95,
            2,
            95,
            2,
            95,
            List.of(),
            List.of(figures),
            List.of(),
            List.of(),
            List.of(),
            9,
            Allowance.NONE);
    return new RangeWords(Optional.of(spread), units);
  }

  private static FigureSpread freeboard(double low, double high) {
    return new FigureSpread(
        2, FREEBOARD, AS_MEASURED, 0.0241, new CoverageInterval(low, high), 0.969);
  }

  private static Finding finding(CheckQuestion question, Margin margin) {
    return new Finding(
        question,
        Role.LIMITS_CREW,
        Outcome.MEETS,
        margin,
        "judgement",
        LoadCase.UNNAMED,
        Note.NONE);
  }

  @Test
  void a_range_is_told_rounded_outward_and_drawn_against_its_limit() {
    RangeWords words = words(UnitFormat.METRIC, freeboard(0.1967, 0.2931));
    RangeWords.Ranged ranged = words.of(finding(FREEBOARD, AS_MEASURED)).orElseThrow();
    assertThat(words.range(ranged).replace(TIED, " ")).isEqualTo("0.19 m to 0.30 m");
    RangeBar bar = words.bar(ranged);
    assertThat(bar.low()).isEqualTo(0.1967 - 0.20);
    assertThat(bar.high()).isEqualTo(0.2931 - 0.20);
    assertThat(bar.words().replace(TIED, " "))
        .isEqualTo(
            "from 0.19 m to 0.30 m, as measured 0.24 m, limit 0.20 m; met in 96 of 100 boats"
                + " measured like this");
  }

  @Test
  void of_a_figure_that_must_not_be_above_its_limit_the_high_end_is_the_bad_one() {
    Margin heel = Margin.atMost(0.4, OptionalDouble.of(0.3), Unit.DEGREE);
    RangeWords words =
        words(
            UnitFormat.METRIC,
            new FigureSpread(2, HEEL, heel, 0.05, new CoverageInterval(0.22, 0.42), 0.97));
    RangeBar bar = words.bar(words.of(finding(HEEL, heel)).orElseThrow());
    assertThat(bar.low()).isEqualTo(0.4 - 0.42);
    assertThat(bar.high()).isEqualTo(0.4 - 0.22);
  }

  /**
   * A boat heels by 0 to 180 degrees; what a curve through three points says besides is no heel.
   */
  @Test
  void no_range_is_told_beyond_what_there_can_be() {
    Margin heel = Margin.atMost(0.4, OptionalDouble.of(0.3), Unit.DEGREE);
    RangeWords words =
        words(
            UnitFormat.METRIC,
            new FigureSpread(2, HEEL, heel, 0.05, new CoverageInterval(-0.8, 6), 0.97));
    assertThat(words.range(words.of(finding(HEEL, heel)).orElseThrow()))
        .isEqualTo("0.0° to 180.0°");
  }

  /** The same act is tried with every crew, and its spread is known of one. */
  @Test
  void of_another_crew_the_range_lies_about_its_own_figure_and_no_boats_were_counted() {
    RangeWords words = words(UnitFormat.METRIC, freeboard(0.2049, 0.2849));
    Margin other = Margin.atLeast(0.20, OptionalDouble.of(0.2149), Unit.METRE);
    RangeWords.Ranged ranged = words.of(finding(FREEBOARD, other)).orElseThrow();
    assertThat(words.range(ranged).replace(TIED, " ")).isEqualTo("0.17 m to 0.26 m");
    assertThat(words.bar(ranged).words()).doesNotContain("met in");
  }

  @Test
  void feet_and_inches_are_told_to_whoever_measured_in_them() {
    UnitFormat feet = new UnitFormat(UnitSystem.FEET_INCHES_POUNDS);
    RangeWords words = words(feet, freeboard(0.1967, 0.2931));
    assertThat(words.range(words.of(finding(FREEBOARD, AS_MEASURED)).orElseThrow()))
        .doesNotContain("m ")
        .contains("in");
  }

  @Test
  void nothing_is_drawn_where_nobody_knows_how_far_a_figure_may_be_off() {
    RangeWords words = words(UnitFormat.METRIC, freeboard(Double.NaN, Double.NaN));
    assertThat(words.of(finding(FREEBOARD, AS_MEASURED))).isEmpty();
    assertThat(words.of(finding(HEEL, AS_MEASURED))).isEmpty();
    assertThat(
            words(UnitFormat.METRIC, freeboard(0.1, 0.3))
                .of(finding(FREEBOARD, Margin.atLeast(0.2, OptionalDouble.empty(), Unit.METRE))))
        .isEmpty();
    assertThat(
            new RangeWords(Optional.empty(), UnitFormat.METRIC).of(finding(FREEBOARD, AS_MEASURED)))
        .isEmpty();
  }
}
