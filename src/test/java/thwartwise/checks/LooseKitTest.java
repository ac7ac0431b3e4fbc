package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;

/**
 * A swamped box on two tanks of 0.7 m, 200 kg with G high, and 100 kg of ballast on its bottom that
 * may float off. On paper GM V = V²/(2 x 1.68) + 1.4 x 1.2³/12 - V zG.
 */
class LooseKitTest {

  private static BoxBoat ballasted(double heightOfG, boolean fastened, Optional<String> in) {
    return BoxBoat.of(3, 1.2, 0.5)
        .hull(200, heightOfG)
        .weightlessShell()
        .proven("stern tank", new Span(0, 0.7))
        .proven("bow tank", new Span(2.3, 3))
        .kit(new Kit("ballast", 100, Vector3.of(1.5, 0, 0.01), iron(in), fastened, in));
  }

  /** Stowed loose it takes up 12.7 of the 420 litres of its tank: 100 kg of iron. */
  private static Optional<Double> iron(Optional<String> in) {
    return in.map(tank -> 100 / 7850.0);
  }

  private static List<Finding> level(double heightOfG, boolean fastened) {
    return findings(
        new SwampedLevel(RULES), trial(ballasted(heightOfG, fastened, Optional.empty())));
  }

  private static double stiffness(double volume, double moment) {
    return volume * volume / 3.36 + 1.4 * 1.728 / 12 - moment;
  }

  // Hull at 1.1: with the ballast 0.0268 + 0.2016 - 0.221 is above nought, without it 0.0119 +
  // 0.2016 - 0.22 is not.
  @Test
  void ballast_that_may_float_off_hides_no_capsize() {
    assertThat(stiffness(0.3, 0.2 * 1.1 + 0.1 * 0.01)).isPositive();
    assertThat(stiffness(0.2, 0.2 * 1.1)).isNegative();
    assertThat(value(level(1.1, true).get(0))).isCloseTo(0, within(1e-6));
    Finding loose = level(1.1, false).get(0);
    assertThat(loose.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(value(loose)).isGreaterThan(Math.toRadians(10));
  }

  // Hull at 0.2: it stands either way, and lies deeper with the ballast still in it.
  @Test
  void a_boat_that_needs_no_ballast_lies_as_with_it_fastened() {
    List<Finding> loose = level(0.2, false);
    assertThat(loose).allMatch(f -> f.outcome() == Outcome.MEETS);
    assertThat(value(loose.get(0))).isCloseTo(0, within(1e-6));
    assertThat(value(loose.get(1))).isCloseTo(0.5 - 300.0 / 1680, within(1e-6));
    assertThat(value(loose.get(1))).isEqualTo(value(level(0.2, true).get(1)));
  }

  @Test
  void kit_shut_away_in_a_locker_stays_though_it_is_not_fastened() {
    LoadedBoat shut = trial(ballasted(1.1, false, Optional.of("stern tank")));
    assertThat(shut.swampedRest(List.of()).reached()).hasSize(1);
    assertThat(value(findings(new SwampedLevel(RULES), shut).get(0))).isCloseTo(0, within(1e-6));
  }

  // Gone with its weight: 200 kg on 1.68 m².
  @Test
  void without_its_loose_kit_the_boat_floats_higher() {
    LoadedBoat loose = trial(ballasted(0.2, false, Optional.empty()));
    assertThat(loose.swampedRest(List.of()).reached())
        .extracting(p -> p.waterAtOrigin().orElseThrow())
        .anySatisfy(d -> assertThat(d).isCloseTo(300.0 / 1680, within(1e-6)))
        .anySatisfy(d -> assertThat(d).isCloseTo(200.0 / 1680, within(1e-6)));
  }

  // The lift to spare has to carry it all: 840 - 300.
  @Test
  void the_lift_to_spare_still_carries_loose_kit() {
    LoadedBoat loose = trial(ballasted(0.2, false, Optional.empty()));
    assertThat(loose.spareBuoyancy(List.of())).isCloseTo(540, within(0.01));
  }
}
