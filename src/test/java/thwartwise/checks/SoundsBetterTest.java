package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.BEAM;
import static thwartwise.checks.OnPaper.DEPTH;
import static thwartwise.checks.OnPaper.LENGTH;
import static thwartwise.checks.OnPaper.PLANE;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Place;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;

/**
 * What sounds better and helps one answer at the cost of another, on the box of OnPaper by the
 * formulas of the wall-sided: ballast, a rail raised, more buoyancy low down.
 */
class SoundsBetterTest {
  private static final double SIDE = 0.24;

  /** 95 kg on the seat, three fifths of 0.4 m out. */
  private static LoadedBoat crewed(BoxBoat boat) {
    return trial(boat, person(95, 0.4));
  }

  private static double heel(LoadedBoat trial) {
    return value(findings(new ThreeFifthsToOneSide(RULES), trial).get(0));
  }

  private static double left(LoadedBoat trial) {
    return value(findings(new ThreeFifthsToOneSide(RULES), trial).get(1));
  }

  private static double atRest(LoadedBoat trial) {
    return value(findings(new FreeboardAtRest(RULES), trial).get(0));
  }

  /** Heel of the box with weights on its middle line and one 0.24 m out at 0.25 m. */
  private static double onPaper(double mass, double moment) {
    double all = mass + 95;
    double g = (moment + 95 * 0.25) / all;
    double inertia = LENGTH * Math.pow(BEAM, 3) / 12;
    double tangent = OnPaper.tangent(all / 1000, PLANE, inertia, g, 95 * SIDE / all);
    assertThat(BEAM / 2 * tangent).as("bottom under on paper").isLessThan(all / 1000 / PLANE);
    return Math.atan(tangent);
  }

  // A hull of 80 kg with its G at 0.35 m: 60 kg of stones at 0.02 m on the floor take from its
  // heel,
  // and 60/3600 m from the side it has left at rest.
  @Test
  void ballast_steadies_a_box_and_sinks_it() {
    BoxBoat hull = BoxBoat.of(LENGTH, BEAM, DEPTH).hull(80, 0.35);
    LoadedBoat bare = crewed(hull);
    LoadedBoat stones =
        crewed(
            BoxBoat.of(LENGTH, BEAM, DEPTH)
                .hull(80, 0.35)
                .weight("stones", 60, Vector3.of(1.5, 0, 0.02)));
    assertThat(heel(bare)).isCloseTo(onPaper(80, 80 * 0.35), within(1e-8));
    assertThat(heel(stones)).isCloseTo(onPaper(140, 80 * 0.35 + 60 * 0.02), within(1e-8));
    assertThat(heel(stones)).isLessThan(heel(bare));
    assertThat(atRest(bare) - atRest(stones)).isCloseTo(60 / 1000.0 / PLANE, within(1e-9));
  }

  // 0.05 m of rail, 12 kg of it at 0.525 m: more side, and more heel.
  @Test
  void a_rail_raised_gives_side_and_weight_high_up() {
    LoadedBoat low = crewed(BoxBoat.of(LENGTH, BEAM, DEPTH).hull(100, 0.2));
    double mass = 112;
    double moment = 100 * 0.2 + 12 * 0.525;
    LoadedBoat high = crewed(BoxBoat.of(LENGTH, BEAM, DEPTH + 0.05).hull(mass, moment / mass));
    assertThat(heel(high)).isCloseTo(onPaper(mass, moment), within(1e-8));
    assertThat(heel(high)).isGreaterThan(heel(low));
    double heeled = heel(high);
    double side = DEPTH + 0.05 - (mass + 95) / 1000 / PLANE;
    assertThat(left(high))
        .isCloseTo(side * Math.cos(heeled) - BEAM / 2 * Math.sin(heeled), within(1e-8));
    assertThat(left(high)).isGreaterThan(left(low));
    assertThat(atRest(high) - atRest(low)).isCloseTo(0.05 - 0.012 / PLANE, within(1e-9));
  }

  // Full of water the box stands on its tanks, 1.68 m² of waterplane with I = 1.4 x 1.2³/12, and 60
  // kg
  // sit dry above it. A third tank on the bottom, 1.6 x 0.6 x 0.06 m and wholly under, lifts 57.6
  // kg:
  // waterplane and BM stay, B comes down, and the same lean heels it more.
  @Test
  void buoyancy_low_down_raises_a_swamped_box_and_steadies_it_less() {
    Body dry = Body.seated("crew", 60, new Place("thwart", 1.5, 0.25, 0.4, 1), 0, 0.24);
    double low = 1.6 * 0.6 * 0.06;
    LoadedBoat tanks = trial(OnPaper.tanks(200), dry);
    LoadedBoat more =
        trial(
            OnPaper.tanks(200)
                .proven("low tank", new Span(0.7, 2.3), new Span(-0.3, 0.3), new Span(0, 0.06)),
            dry);
    assertThat(swampedHeel(tanks)).isCloseTo(swamped(0), within(1e-6));
    assertThat(swampedHeel(more)).isCloseTo(swamped(low), within(1e-6));
    assertThat(swampedHeel(more)).isGreaterThan(swampedHeel(tanks));
    assertThat(spare(more) - spare(tanks)).isCloseTo(1000 * low, within(0.01));
  }

  /** Half the crew's weight at three fifths of 0.4 m: all of it at 0.12. */
  private static double swamped(double low) {
    double volume = 0.260;
    double plane = 1.4 * BEAM;
    double draught = (volume - low) / plane;
    double keelToB = ((volume - low) * draught / 2 + low * 0.03) / volume;
    double bm = 1.4 * Math.pow(BEAM, 3) / 12 / volume;
    double g = (200 * 0.2 + 60 * 0.25) / 260;
    double gm = keelToB + bm - g;
    double offset = 60 * 0.12 / 260;
    double tangent = OnPaper.root(t -> (gm + bm * t * t / 2) * t - offset, 0, 1);
    assertThat(draught - BEAM / 2 * tangent).as("bottom under on paper").isPositive();
    assertThat(draught - 0.3 * tangent).as("low tank under on paper").isGreaterThan(0.06);
    return Math.atan(tangent);
  }

  private static double swampedHeel(LoadedBoat trial) {
    return value(findings(new SwampedMargin(RULES), trial).get(0));
  }

  private static double spare(LoadedBoat trial) {
    return value(findings(new SwampedLift(RULES), trial).get(0));
  }
}
