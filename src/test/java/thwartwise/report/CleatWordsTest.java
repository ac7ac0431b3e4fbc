package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.boat.Cleat;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;
import thwartwise.report.MeasuredSection.CleatWords;

class CleatWordsTest {

  @Test
  void a_cleat_is_where_a_tape_would_find_it() {
    assertThat(words(-0.03, 0.25, 0.46))
        .isEqualTo("ring (0.03 m behind the aft end, 0.25 m to port, 0.46 m up)");
    assertThat(words(3.9, 0, 0.45))
        .isEqualTo("ring (3.9 m forward of the aft end, on the middle line, 0.45 m up)");
    assertThat(words(0, -0.3, 0.4))
        .isEqualTo("ring (0 m forward of the aft end, 0.3 m to starboard, 0.4 m up)");
  }

  private static String words(double x, double y, double z) {
    return CleatWords.of(new Cleat("ring", Vector3.of(x, y, z)), UnitFormat.METRIC)
        .replace(UnitFormat.TIED, " ");
  }
}
