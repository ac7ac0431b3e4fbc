package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.inspection.StateFigures.PoseFigures;
import thwartwise.measure.UnitFormat;

class PoseWordsTest {
  // Heel is positive starboard down, trim positive bow down.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | 0 | true | upright, not heeled and not trimmed",
        "2 | 0 | true | upright, heeled 2.0 degrees to starboard and not trimmed",
        "-2.01 | 0 | true | upright, heeled 2.1 degrees to port and not trimmed",
        "0 | 1.24 | true | upright, not heeled and trimmed 1.3 degrees down by the bow",
        "0 | -3 | true | upright, not heeled and trimmed 3.0 degrees down by the stern",
        "0 | 0 | false | upright, not heeled and not trimmed, and does not stay so when nudged",
      })
  void both_angles_are_told_with_their_side(
      double heelDeg, double trimDeg, boolean stable, String words) {
    PoseFigures pose =
        new PoseFigures(
            PoseOrientation.UPRIGHT,
            OptionalDouble.empty(),
            Math.toRadians(heelDeg),
            Math.toRadians(trimDeg),
            stable);
    assertThat(FloatingSection.pose(pose).replace(UnitFormat.TIED, " ")).isEqualTo(words);
  }
}
