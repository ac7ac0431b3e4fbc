package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnitTest {
  @Test
  void a_share_is_shown_in_whole_percent_rounded_to_its_side() {
    assertThat(Unit.PERCENT.shown(0.534)).isCloseTo(53.4, within(1e-12));
    assertThat(Unit.PERCENT.down(53.4)).isEqualTo("53");
    assertThat(Unit.PERCENT.up(53.4)).isEqualTo("54");
  }

  @Test
  void a_turn_a_metre_is_shown_in_degrees() {
    assertThat(Unit.DEGREE_PER_METRE.shown(Math.PI / 6)).isCloseTo(30, within(1e-12));
    assertThat(Unit.DEGREE_PER_METRE.up(Unit.DEGREE_PER_METRE.shown(Math.PI / 6)))
        .isEqualTo("30.0");
  }
}
