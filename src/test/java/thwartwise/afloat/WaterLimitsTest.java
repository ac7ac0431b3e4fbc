package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.boat.Opening;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.FloodPoint;

/** Loose water in wells of boxes, against paper; found as near as a tenth of a litre. */
class WaterLimitsTest {
  private static final double FOUND = 1.1e-4;

  private static WaterLimits of(BoxBoat boat) {
    Loading loading = new Loading(boat.model(), List.of(), List.of(), 1);
    return WaterLimits.of(LooseWater.of(loading), Bay.WHOLE, boat.model().edges());
  }

  /** 3 by 1.2 by 0.5 m with a well of 0.4 m amidships: water cannot run to one end. */
  private static BoxBoat well(double mass) {
    return BoxBoat.of(3, 1.2, 0.5)
        .hull(mass, 0.1)
        .weightlessShell()
        .proven("stern tank", new Span(0, 1.3))
        .proven("bow tank", new Span(1.7, 3));
  }

  // On an even keel the rail is under when hull and water fill the box: 3.6 x 0.5 - m.
  @ParameterizedTest
  @ValueSource(doubles = {1575, 1600, 1650, 1700, 1750, 1790, 1799})
  void the_rail_goes_under_when_hull_and_water_fill_the_box(double mass) {
    WaterLimits limits = of(well(mass));
    double litres = 1.8 - mass / 1000;
    assertThat(limits.edgeUnder().orElseThrow()).isBetween(litres - 1e-6, litres + FOUND);
    assertThat(limits.edgeAt()).as("a box under to its rail has no pose left").isEmpty();
    assertThat(limits.noReturn()).isEmpty();
    assertThat(limits.trouble()).isEqualTo(limits.edgeUnder());
  }

  // A notch 0.4 m up, and so 0.1 m under the rail: 3.6 x 0.4 - m.
  @Test
  void a_notch_under_the_rail_is_the_first_edge() {
    WaterLimits limits =
        of(well(1300).opening(new Opening("notch", Vector3.of(0, 0, 0.4), 0.2, true)));
    assertThat(limits.edgeUnder().orElseThrow()).isCloseTo(0.14, within(FOUND));
    assertThat(limits.edgeAt()).isEqualTo("notch");
  }

  // The well takes 240 litres: full, 300 kg lie at 540/3600.
  @Test
  void a_well_full_to_the_rail_brings_no_edge_under() {
    WaterLimits limits = of(well(300));
    assertThat(limits)
        .isEqualTo(new WaterLimits(OptionalDouble.empty(), "", OptionalDouble.empty()));
    assertThat(limits.trouble()).isEmpty();
  }

  @Test
  void a_boat_that_sinks_dry_stands_no_water_at_all() {
    WaterLimits limits = of(well(1900));
    assertThat(limits.edgeUnder().orElseThrow()).isZero();
    assertThat(limits.edgeAt()).isEmpty();
  }

  @Test
  void a_boat_with_an_edge_under_already_stands_none_either() {
    WaterLimits limits =
        of(well(1300).opening(new Opening("hole", Vector3.of(0, 0, 0.3), 0.2, true)));
    assertThat(limits.edgeUnder().orElseThrow()).isZero();
    assertThat(limits.edgeAt()).isEqualTo("hole");
    assertThat(limits.noReturn()).isEmpty();
  }

  /** 4 by 1.2 by 0.5 m with side tanks that leave a channel 0.6 m wide, and G high. */
  private static BoxBoat channel(double mass, double heightOfG) {
    return BoxBoat.of(4, 1.2, 0.5)
        .hull(mass, heightOfG)
        .weightlessShell()
        .proven("port tank", Span.ALL, new Span(0.3, 0.6), Span.ALL)
        .proven("starboard tank", Span.ALL, new Span(-0.6, -0.3), Span.ALL);
  }

  // GM V = V²/(2 x 4.8) + 4 (1.2³ - 0.6³)/12 - V₀ zG - w²/(2 x 2.4), V = V₀ + w, against the
  // millimetre of GM below which a boat does not count as stable.
  private static double loll(double hull, double heightOfG) {
    double free = 4 * (1.728 - 0.216) / 12;
    return new BrentSolver(1e-12)
        .solve(
            200,
            w ->
                (hull + w) * (hull + w) / 9.6
                    + free
                    - hull * heightOfG
                    - w * w / 4.8
                    - 0.001 * (hull + w),
            0.01,
            1.2);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.70, 1.69, 1.68})
  void it_no_longer_comes_back_from_the_litres_paper_finds(double heightOfG) {
    WaterLimits limits = of(channel(300, heightOfG));
    double lolls = loll(0.3, heightOfG);
    assertThat(lolls).isBetween(0.6, 1.0);
    assertThat(limits.noReturn().orElseThrow()).isCloseTo(lolls, within(3e-4));
    assertThat(limits.trouble()).isEqualTo(limits.noReturn());
    limits.edgeUnder().ifPresent(e -> assertThat(e).isGreaterThan(lolls));
  }

  // G so high that it lolls dry: 0.3²/9.6 + 4 x 1.728/12 = 0.585 against 0.3 x 2.
  @Test
  void a_boat_that_lolls_dry_does_not_come_back_from_the_first_litre() {
    WaterLimits limits = of(channel(300, 2.0));
    assertThat(limits.trouble().orElseThrow()).isZero();
  }

  // 1200 kg in 2.4 m³ and G at 0.1: the channel's 1.2 m³ would just fill box and well together.
  @Test
  void with_its_weight_low_it_comes_back_until_the_channel_is_nearly_full() {
    WaterLimits limits = of(channel(600, 0.1));
    assertThat(limits.noReturn()).isEmpty();
    assertThat(limits.edgeUnder()).isEmpty();
  }

  @Test
  void the_lesser_of_both_is_the_trouble() {
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble some = OptionalDouble.of(0.2);
    OptionalDouble more = OptionalDouble.of(0.3);
    assertThat(new WaterLimits(more, "rail", some).trouble()).isEqualTo(some);
    assertThat(new WaterLimits(some, "rail", more).trouble()).isEqualTo(some);
    assertThat(new WaterLimits(some, "rail", none).trouble()).isEqualTo(some);
    assertThat(new WaterLimits(none, "", some).trouble()).isEqualTo(some);
    assertThat(new WaterLimits(none, "", none).trouble()).isEqualTo(none);
  }

  // Water in the aft half of the well only, 0.1 m aft of the middle: it trims 1670 kg by
  // 0.1 w/(2.7 + V²/7.2 - 0.167 - ...) and brings the stern under when that by 1.5 m takes what
  // 0.13 - w leaves of 3.6 m². To first order w = 0.110, and on an even keel it would not fit.
  @Test
  void only_the_bay_asked_for_is_filled() {
    BoxBoat boat = well(1670);
    LooseWater water = LooseWater.of(new Loading(boat.model(), List.of(), List.of(), 1));
    Bay aft = new Bay("aft", new Box(new Span(1.3, 1.5), Span.ALL, Span.ALL));
    assertThat(water.capacity(aft)).isCloseTo(0.12, within(1e-5));
    WaterLimits limits = WaterLimits.of(water, aft, boat.model().edges());
    assertThat(limits.edgeUnder().orElseThrow()).isCloseTo(0.110, within(0.001));
    assertThat(limits.edgeAt()).isEqualTo("rail, near aft");
  }

  // Just short of full: the edge goes under with 0.239 of 0.24 m³ in, past the last whole step.
  @Test
  void an_edge_that_goes_under_just_before_the_well_is_full_is_found() {
    assertThat(of(well(1561)).edgeUnder().orElseThrow()).isCloseTo(0.239, within(FOUND));
    assertThat(of(well(1559)).edgeUnder()).isEmpty();
  }

  // What is less than asked for is found as near as ever, what is as much or more is told as that.
  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.05, 0.099, 0.101, 0.15, 0.3})
  void asked_whether_it_stands_so_much_it_answers_as_the_whole_search_does(double enough) {
    for (BoxBoat boat : List.of(well(1700), well(300), channel(300, 1.7), channel(300, 2.0))) {
      LooseWater water = LooseWater.of(new Loading(boat.model(), List.of(), List.of(), 1));
      List<FloodPoint> edges = boat.model().edges();
      double trouble = WaterLimits.of(water, Bay.WHOLE, edges).trouble().orElse(1e9);
      double told = found(boat, enough, false).trouble().orElse(1e9);
      assertThat(told >= enough).isEqualTo(trouble >= enough);
      if (trouble < enough) {
        assertThat(told).isEqualTo(trouble);
      }
    }
  }

  // Fillings that are harmless before a nudge are not searched in full: the same litres without.
  @ParameterizedTest
  @ValueSource(doubles = {-30, -5, -1, 0, 1, 5, 30})
  void a_boat_not_nudged_at_fillings_that_are_harmless_comes_out_alike(double heavier) {
    for (double mass : new double[] {300, 700, 1561, 1700}) {
      alike(well(mass + heavier));
    }
    for (double heightOfG : new double[] {1.68, 1.7, 1.75, 2.0}) {
      alike(channel(300 + heavier, heightOfG));
      alike(channel(450 + heavier, heightOfG));
    }
  }

  private static void alike(BoxBoat boat) {
    assertThat(found(boat, Double.POSITIVE_INFINITY, true)).isEqualTo(of(boat));
  }

  private static WaterLimits found(BoxBoat boat, double enough, boolean roughly) {
    LooseWater water = LooseWater.of(new Loading(boat.model(), List.of(), List.of(), 1));
    return water.limits(Bay.WHOLE, boat.model().edges(), enough, roughly);
  }
}
