package thwartwise.rules;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.SomeWaters;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.report.WaterWords;

class ValidWatersTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  private static List<String> words(SomeWaters waters) {
    return ValidWaters.of(
            WaterAdjustedLimits.tightened(RULES, waters.waters(), UnitFormat.METRIC),
            waters.waters())
        .stream()
        .map(statement -> WaterWords.sentence(statement, UnitFormat.METRIC))
        .toList();
  }

  // 0.10 m is 3.94 in, 1.5 m/s 3.36 mph, 500 m 546.8 yards, paced to fifty: each down; 15 degrees
  // Celsius are 59.
  @Test
  void in_feet_they_are_told_to_the_cautious_side() {
    SomeWaters waters = SomeWaters.sheltered();
    assertThat(
            WaterWords.sentence(
                    ValidWaters.of(RULES, waters.waters()).get(0),
                    new UnitFormat(UnitSystem.FEET_INCHES_POUNDS))
                .replace('\u00a0', ' '))
        .isEqualTo(
            "Holds for: waves up to 3 in (a hand's breadth), not breaking; wind up to force 4"
                + " (dust and paper fly, white caps on many crests); a current up to 3 mph; no"
                + " wash of passing boats; water of 59 °F or warmer; up to 500 yards from the"
                + " shore");
  }

  @Test
  void sheltered_waters_are_told_with_their_figures() {
    assertThat(words(SomeWaters.sheltered()))
        .containsExactly(
            "Holds for: waves up to 0.10 m (a hand's breadth), not breaking; wind up to force 4"
                + " (dust and paper fly, white caps on many crests); a current up to 1.5 m/s; no"
                + " wash of passing boats; water of 15 degrees Celsius or warmer; up to 500 m from"
                + " the shore",
            "Not for: waves over 0.30 m or breaking; more wind, more current or farther out; a"
                + " weir, sluice or fall within reach; sail, tow or a planing speed");
  }

  @Test
  void cold_water_with_wash_is_told_as_such() {
    List<String> words = words(SomeWaters.sheltered().wash().celsius(9));
    assertThat(words.get(0))
        .contains("waves up to 0.30 m (below the knee)")
        .contains("wash of passing boats up to 0.30 m")
        .contains("water colder than 15 degrees too")
        .endsWith("up to 200 m from the shore");
    assertThat(words.get(2)).startsWith("The water is cold: nobody goes alone");
  }
}
