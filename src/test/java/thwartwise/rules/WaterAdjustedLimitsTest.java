package thwartwise.rules;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.SomeWaters;
import thwartwise.boat.Waters;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.UnitFormat;

/** Limits only ever get tighter with the waters. */
class WaterAdjustedLimitsTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  private static RuleSet under(SomeWaters waters) {
    return WaterAdjustedLimits.tightened(RULES, waters.waters(), UnitFormat.METRIC);
  }

  private static SomeWaters sheltered() {
    return SomeWaters.sheltered();
  }

  @Test
  void waters_nobody_described_leave_every_limit_as_it_is() {
    assertThat(WaterAdjustedLimits.tightened(RULES, Waters.NOT_STATED, UnitFormat.METRIC))
        .isEqualTo(RULES);
  }

  @Test
  void waters_said_to_be_calm_change_nothing() {
    RuleSet calm = under(sheltered().waves(0).wind(0).current(0).celsius(24).offshore(1));
    assertThat(calm).isEqualTo(RULES);
  }

  @Test
  void a_wave_must_be_left_as_freeboard_and_half_of_it_when_heeled() {
    RuleSet wavy = under(sheltered().waves(0.26));
    assertThat(wavy.value("freeboard-at-rest")).isEqualTo(0.26);
    assertThat(wavy.value("freeboard-at-rest-canoe")).isEqualTo(0.26);
    assertThat(wavy.value("freeboard-heeled")).isCloseTo(0.13, within(1e-12));
    assertThat(wavy.limit("freeboard-at-rest").cited())
        .isEqualTo("waves of 0.26 m: a crest as high as the lowest edge comes aboard (judgement)");
  }

  @Test
  void a_low_wave_tightens_the_canoe_and_leaves_the_dinghy() {
    RuleSet wavy = under(sheltered().waves(0.17));
    assertThat(wavy.limit("freeboard-at-rest")).isEqualTo(RULES.limit("freeboard-at-rest"));
    assertThat(wavy.value("freeboard-at-rest-canoe")).isEqualTo(0.17);
  }

  @Test
  void wash_counts_as_waves_and_higher_waves_count_for_more() {
    assertThat(under(sheltered().wash()).value("freeboard-at-rest")).isEqualTo(0.3);
    assertThat(under(sheltered().wash().waves(0.1)).value("freeboard-at-rest")).isEqualTo(0.3);
    assertThat(under(sheltered().wash().waves(0.4)).value("freeboard-at-rest")).isEqualTo(0.4);
  }

  @Test
  void a_stronger_wind_is_the_one_the_boat_is_tried_in_and_a_weaker_one_is_not() {
    assertThat(under(sheltered().wind(9)).value("wind")).isEqualTo(9);
    assertThat(under(sheltered().wind(3)).value("wind")).isEqualTo(RULES.value("wind"));
    assertThat(under(sheltered().current(2)).value("current")).isEqualTo(2);
    assertThat(under(sheltered().current(0.2)).value("current")).isEqualTo(RULES.value("current"));
  }

  // Below 15 degrees: read from lifeboat and paddling bodies.
  @Test
  void under_fifteen_degrees_more_lift_is_needed_and_less_time_is_left() {
    RuleSet cold = under(sheltered().celsius(14.9));
    assertThat(cold.value("swamped-lift-per-person")).isEqualTo(30);
    assertThat(cold.value("bailing-minutes")).isEqualTo(10);
    assertThat(under(sheltered().celsius(15))).isEqualTo(RULES);
  }

  @Test
  void a_temperature_that_is_no_number_is_cold() {
    assertThat(under(sheltered().celsius(Double.NaN)).value("swamped-lift-per-person"))
        .isEqualTo(30);
  }

  /** Each waters beside the same a little worse: no limit may get laxer. */
  @Test
  void worse_waters_never_loosen_any_limit() {
    List<SomeWaters> worsening = new ArrayList<>();
    for (double wave : new double[] {0, 0.12, 0.25, 0.5}) {
      worsening.add(sheltered().waves(wave));
      worsening.add(sheltered().waves(wave).wind(20 * wave));
      worsening.add(sheltered().waves(wave).wind(20 * wave).current(4 * wave));
      worsening.add(sheltered().waves(wave).wind(20 * wave).current(4 * wave).wash());
      worsening.add(sheltered().waves(wave).wind(20 * wave).current(4 * wave).wash().celsius(9));
    }
    for (int i = 0; i < worsening.size(); i += 5) {
      for (int j = i + 1; j < i + 5; j++) {
        noLaxer(under(worsening.get(j - 1)), under(worsening.get(j)));
      }
    }
    for (int i = 5; i < worsening.size(); i++) {
      noLaxer(under(worsening.get(i - 5)), under(worsening.get(i)));
    }
  }

  private static void noLaxer(RuleSet before, RuleSet after) {
    before
        .limits()
        .forEach(
            (name, limit) ->
                assertThat(limit.stricter().isStricter(limit.value(), after.value(name)))
                    .as(name)
                    .isFalse());
  }
}
