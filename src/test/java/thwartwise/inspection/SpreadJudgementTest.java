package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.loadcase.LoadCase;
import thwartwise.spread.FigureSpread;
import thwartwise.uncertainty.CoverageInterval;

/** A freeboard that must be 0.20 m, and is known to 0.02 m. */
class SpreadJudgementTest {
  private static final CheckQuestion FREEBOARD =
      CheckQuestion.of(CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD);

  private static Margin margin(double value) {
    return Margin.atLeast(0.20, OptionalDouble.of(value), Unit.METRE);
  }

  private static Finding finding(double value, Outcome screened) {
    return new Finding(
        FREEBOARD,
        Role.LIMITS_CREW,
        screened,
        margin(value),
        "",
        LoadCase.UNNAMED,
        Note.of(Note.Fact.NO_SUCH_STATE));
  }

  private static FigureSpread spread(double value, double share) {
    return new FigureSpread(
        1, FREEBOARD, margin(value), 0.02, new CoverageInterval(value - 0.04, value + 0.04), share);
  }

  /** By hand: of normally distributed errors, 95 of 100 leave it met from 0.20 + 1.645 x 0.02. */
  @ParameterizedTest
  @CsvSource({
    "0.240, MEETS, MEETS",
    "0.234, MEETS, MEETS",
    "0.232, MEETS, BORDERLINE",
    "0.201, BORDERLINE, BORDERLINE",
    "0.240, BORDERLINE, BORDERLINE",
    "0.199, FALLS_SHORT, BORDERLINE",
    "0.181, FALLS_SHORT, BORDERLINE",
    "0.179, FALLS_SHORT, FALLS_SHORT",
    "0.240, NOT_ASSESSED, NOT_ASSESSED",
  })
  void a_finding_meets_only_where_95_of_100_boats_do(
      double value, Outcome screened, Outcome expected) {
    assertThat(SpreadJudgement.outcome(finding(value, screened), spread(0.30, 1)))
        .isEqualTo(expected);
  }

  @Test
  void the_share_that_was_drawn_decides_where_the_figure_is_that_of_the_crew_itself() {
    Finding finding = finding(0.24, Outcome.MEETS);

    assertThat(SpreadJudgement.outcome(finding, spread(0.24, 0.95))).isEqualTo(Outcome.MEETS);
    assertThat(SpreadJudgement.outcome(finding, spread(0.24, 0.949))).isEqualTo(Outcome.BORDERLINE);
  }

  /** A spread that is not known proves nothing met, and leaves what falls short as it is. */
  @Test
  void a_figure_that_is_lost_one_spread_away_is_not_met() {
    FigureSpread lost =
        new FigureSpread(
            1, FREEBOARD, margin(0.3), Double.NaN, new CoverageInterval(0.1, 0.4), 0.99);

    assertThat(SpreadJudgement.outcome(finding(0.24, Outcome.MEETS), lost))
        .isEqualTo(Outcome.BORDERLINE);
    assertThat(SpreadJudgement.outcome(finding(0.19, Outcome.FALLS_SHORT), lost))
        .isEqualTo(Outcome.FALLS_SHORT);
  }
}
