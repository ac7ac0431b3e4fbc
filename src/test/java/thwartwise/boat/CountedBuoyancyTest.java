package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;
import thwartwise.report.BuoyancyReasonWords;
import thwartwise.sampleboats.ElectricBoat;

class CountedBuoyancyTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final CountedBuoyancy.Drawn DRAWN = new CountedBuoyancy.Drawn(0.1, 0.1, 0.3, 0.3);
  private static final Box BOX = new Box(new Span(0, 1), Span.ALL, new Span(0, 0.3));

  @Test
  void proven_air_with_a_fresh_test_counts_in_full() {
    counts(air(Seal.PROVEN, test(TODAY.minusMonths(2), 20, 0)), 1, 1, "proven 2026-09-25 by owner");
  }

  @Test
  void a_test_is_fresh_on_its_last_day_and_stale_on_the_next() {
    assertThat(of(air(Seal.PROVEN, test(TODAY.minusMonths(12), 20, 0))).share()).isEqualTo(1);
    counts(
        air(Seal.PROVEN, test(TODAY.minusMonths(12).minusDays(1), 20, 0)),
        0,
        1,
        "its leak test of 2025-11-24 is over twelve months old: test again");
  }

  @Test
  void a_test_dated_in_the_future_proves_nothing() {
    counts(
        air(Seal.PROVEN, test(TODAY.plusDays(1), 20, 0)),
        0,
        1,
        "its leak test is dated in the future, 2026-11-26");
    assertThat(of(air(Seal.PROVEN, test(TODAY, 20, 0))).share()).isEqualTo(1);
  }

  @Test
  void a_short_test_proves_nothing() {
    counts(
        air(Seal.PROVEN, test(TODAY, 9.9, 0)),
        0,
        1,
        "its leak test lasted under 10 minutes: test longer");
    assertThat(of(air(Seal.PROVEN, test(TODAY, 10, 0))).share()).isEqualTo(1);
    assertThat(of(air(Seal.PROVEN, test(TODAY, Double.NaN, 0))).share()).isZero();
  }

  // Drawn as deep as the water stands over it: 0.5 litres in 20 minutes are 1.5 in an hour, of 100.
  @Test
  void of_a_chamber_that_let_water_in_what_is_left_after_an_hour_counts() {
    counts(
        air(Seal.PROVEN, test(TODAY, 20, 0.5)),
        0.985,
        0.985,
        "proven 2026-11-25 by owner; takes 0.5 l in 20 min: swamped, half its lift is still there"
            + " after a day; 98 % of its air is left after 60 min");
    counts(
        air(Seal.PROVEN, test(TODAY, 10, 1)),
        0.94,
        0.94,
        "proven 2026-11-25 by owner; takes 1.0 l in 10 min: swamped, half its lift is gone after"
            + " 8 h 20 min; 94 % of its air is left after 60 min");
  }

  @Test
  void a_chamber_repaired_on_the_day_of_its_test_or_later_counts_for_nothing_until_tested_again() {
    Optional<SealTest> tested = Optional.of(test(TODAY.minusMonths(2), 20, 0));
    LocalDate day = TODAY.minusMonths(2);
    assertThat(of(new Filling.Air(Seal.PROVEN, tested, Optional.of(day.minusDays(1)))).share())
        .isEqualTo(1);
    counts(
        new Filling.Air(Seal.PROVEN, tested, Optional.of(day)),
        0,
        1,
        "repaired or altered 2026-09-25, and its leak test of 2026-09-25 is not later: test again");
    assertThat(of(new Filling.Air(Seal.PROVEN, tested, Optional.of(TODAY))).share()).isZero();
  }

  // What an hour leaves of a chamber on one side may lie level where the whole of it does not.
  @Test
  void a_boat_whose_chamber_leaks_is_held_to_what_it_carries_before_any_water_is_in() {
    BoxBoat box = BoxBoat.of(3, 1.2, 0.4).proven("fore locker", new Span(2.5, 3));
    assertThat(box.model().withFewerAnswers()).isEmpty();
    Boat boat = box.boat();
    Filling leaking = air(Seal.PROVEN, test(TODAY, 20, 0.5));
    BoatModel model =
        BoatModel.of(
            boat.withChambers(boat.chambers().stream().map(c -> c.filledWith(leaking)).toList()),
            TODAY);
    assertThat(model.spaces().get(0).counting().share()).isLessThan(1);
    assertThat(model.withFewerAnswers())
        .singleElement()
        .satisfies(full -> assertThat(full.spaces().get(0).counting().share()).isEqualTo(1));
  }

  @Test
  void a_chamber_that_leaked_counts_for_nothing_even_if_claims_prove() {
    counts(
        air(Seal.PROVEN, test(TODAY, 20, 1.1)),
        0,
        0,
        "its leak test let in 1.1 litres, over 1: find the leak and test again");
    // 1 litre in 20 minutes: 3 of the 100 litres in an hour.
    assertThat(of(air(Seal.PROVEN, test(TODAY, 20, 1.0))).share()).isCloseTo(0.97, within(1e-12));
    assertThat(of(air(Seal.PROVEN, test(TODAY, 20, Double.NaN))).share()).isZero();
  }

  @Test
  void proven_without_a_test_is_only_a_word() {
    counts(
        air(Seal.PROVEN, Optional.empty()),
        0,
        1,
        "called proven, but no leak test is recorded: it counts for nothing");
  }

  @Test
  void a_claim_counts_for_nothing_until_it_is_proven() {
    counts(
        air(Seal.CLAIMED, Optional.empty()),
        0,
        1,
        "only claimed: it counts for nothing until a leak test is recorded");
    // A test held beside a claim does not make it proven: somebody has to say so.
    assertThat(of(air(Seal.CLAIMED, test(TODAY, 20, 0))).share()).isZero();
  }

  @Test
  void an_open_space_fills() {
    counts(air(Seal.OPEN, Optional.empty()), 0, 0, "open: it fills");
  }

  @Test
  void fastened_closed_cell_foam_counts_nine_tenths() {
    counts(new Filling.Foam(true, true), 0.9, 0.9, "closed-cell foam, fastened: nine tenths count");
  }

  @Test
  void loose_or_open_foam_counts_for_nothing() {
    counts(
        new Filling.Foam(true, false),
        0,
        0,
        "foam that is not fastened floats away and does not count");
    counts(
        new Filling.Foam(false, true),
        0,
        0,
        "foam that is not known to be closed-cell soaks and does not count");
  }

  @Test
  void the_smaller_of_drawn_and_measured_litres_counts() {
    Filling proven = air(Seal.PROVEN, test(TODAY, 20, 0));
    assertThat(of(proven, Optional.of(0.08)).share()).isCloseTo(0.8, within(1e-12));
    assertThat(of(proven, Optional.of(0.13)).share()).isEqualTo(1);
    assertThat(of(new Filling.Foam(true, true), Optional.of(0.05)).share())
        .isCloseTo(0.45, within(1e-12));
    assertThat(of(air(Seal.CLAIMED, Optional.empty()), Optional.of(0.08)).ifProven())
        .isCloseTo(0.8, within(1e-12));
  }

  @Test
  void no_more_counts_than_straight_lines_between_the_stations_hold() {
    Chamber locker =
        new Chamber("locker", BOX, new Filling.Foam(true, true), Optional.empty(), false);
    assertThat(share(locker, 0.1, 0.07)).isCloseTo(0.9 * 0.7, within(1e-12));
    assertThat(share(locker, 0.1, 0.12)).isEqualTo(0.9);
    Chamber poured =
        new Chamber("locker", BOX, new Filling.Foam(true, true), Optional.of(0.08), false);
    assertThat(share(poured, 0.1, 0.07)).isCloseTo(0.9 * 0.7, within(1e-12));
    assertThat(share(poured, 0.1, 0.09)).isCloseTo(0.9 * 0.8, within(1e-12));
  }

  private static double share(Chamber chamber, double faired, double straight) {
    return CountedBuoyancy.of(
            chamber.parts().get(0),
            new CountedBuoyancy.Drawn(faired, straight, 0.3, 0.3),
            List.of(),
            ElectricalSystem.NONE,
            List.of(),
            TODAY,
            HOUR)
        .share();
  }

  @Test
  void a_space_with_a_battery_or_charger_never_counts() {
    Filling proven = air(Seal.PROVEN, test(TODAY, 20, 0));
    for (String name :
        List.of("battery", "Batteries", "CHARGER", "house accumulator", "lithium power pack")) {
      CountedBuoyancy lying = of(proven, kit(name, Vector3.of(0.5, 0, 0.1), Optional.empty()));
      assertThat(lying.share()).isZero();
      assertThat(lying.ifProven()).isZero();
      assertThat(BuoyancyReasonWords.of(lying.why(), UnitFormat.METRIC))
          .isEqualTo(
              "holds the "
                  + name
                  + ": such a space is vented, never sealed, and never counts; moved out, and the"
                  + " space then sealed and proven, 100 litres would count");
    }
    CountedBuoyancy named =
        of(proven, kit("battery", Vector3.of(2, 0, 0.1), Optional.of("locker")));
    assertThat(named.share()).isZero();
    CountedBuoyancy elsewhere =
        of(proven, kit("battery", Vector3.of(2, 0, 0.1), Optional.of("bow")));
    assertThat(elsewhere.share()).isEqualTo(1);
    CountedBuoyancy anchor = of(proven, kit("anchor", Vector3.of(0.5, 0, 0.1), Optional.empty()));
    assertThat(anchor.share()).isEqualTo(1);
  }

  // A hundred litres drawn, of which what lies in it loose takes its own.
  @Test
  void what_is_stowed_loose_takes_up_air_of_its_chamber() {
    CountedBuoyancy bags = of(air(Seal.PROVEN, test(TODAY, 20, 0)), stowed(5, Optional.of(0.03)));
    assertThat(bags.share()).isCloseTo(0.7, within(1e-12));
    assertThat(BuoyancyReasonWords.of(bags.why(), UnitFormat.METRIC))
        .isEqualTo("proven 2026-11-25 by owner; what is stowed loose takes up 30 litres");
    CountedBuoyancy claimed = of(air(Seal.CLAIMED, Optional.empty()), stowed(5, Optional.of(0.03)));
    assertThat(claimed.share()).isZero();
    assertThat(claimed.ifProven()).isCloseTo(0.7, within(1e-12));
    CountedBuoyancy packed = of(air(Seal.PROVEN, test(TODAY, 20, 0)), stowed(5, Optional.of(0.2)));
    assertThat(packed.share()).isZero();
  }

  // A kilogram a litre, so 5 kg take 5 of the 100 litres.
  @Test
  void stowed_things_nobody_measured_take_up_a_litre_a_kilogram() {
    assertThat(of(air(Seal.PROVEN, test(TODAY, 20, 0)), stowed(5, Optional.empty())).share())
        .isCloseTo(0.95, within(1e-12));
  }

  // Archimedes: a tight chamber displaces its whole volume, whatever is fixed inside.
  @Test
  void what_is_fastened_inside_leaves_the_chamber_its_lift() {
    Kit spare =
        new Kit("spare", 5, Vector3.of(2, 0, 0.1), Optional.of(0.03), true, Optional.of("locker"));
    CountedBuoyancy counted = of(air(Seal.PROVEN, test(TODAY, 20, 0)), spare);
    assertThat(counted.share()).isEqualTo(1);
    assertThat(BuoyancyReasonWords.of(counted.why(), UnitFormat.METRIC))
        .isEqualTo("proven 2026-11-25 by owner");
  }

  private static Kit stowed(double mass, Optional<Double> volume) {
    return new Kit("bags", mass, Vector3.of(2, 0, 0.1), volume, false, Optional.of("locker"));
  }

  // A battery gasses into air that is shut in; foam has none to speak of, and cannot fill.
  @Test
  void foam_around_a_battery_keeps_its_lift() {
    Filling foam = new Filling.Foam(true, true);
    assertThat(of(foam, kit("battery", Vector3.of(0.5, 0, 0.1), Optional.empty())).share())
        .isEqualTo(0.9);
    assertThat(of(foam, kit("battery", Vector3.of(2, 0, 0.1), Optional.of("locker"))).share())
        .isEqualTo(0.9);
  }

  // 8 litres are a cube 0.2 m a side: with its centre outside one face reaches 2 cm in, as that of
  // a battery that leans on the wall of the locker does by the tape.
  @Test
  void a_battery_beside_a_space_leaves_it_its_air_and_one_with_its_middle_inside_takes_it() {
    Filling proven = air(Seal.PROVEN, test(TODAY, 20, 0));
    assertThat(of(proven, cube(1.08, 0)).share()).isEqualTo(1);
    assertThat(of(proven, cube(1.001, 0)).share()).isEqualTo(1);
    assertThat(of(proven, cube(1.0, 0)).share()).isZero();
  }

  private static Kit cube(double x, double y) {
    return new Kit(
        "battery", 20, Vector3.of(x, y, 0.1), Optional.of(0.008), true, Optional.empty());
  }

  @Test
  void a_battery_in_one_of_two_twins_takes_that_one_alone() {
    assertThat(twins(-0.4, Optional.empty())).containsExactly(1.0, 0.0);
    assertThat(twins(0.4, Optional.empty())).containsExactly(0.0, 1.0);
    assertThat(twins(-0.4, Optional.of("side"))).containsExactly(1.0, 0.0);
    assertThat(twins(0, Optional.of("side, port"))).containsExactly(0.0, 1.0);
    assertThat(twins(-0.4, Optional.of("side, port"))).containsExactly(0.0, 0.0);
    // In one of them, and nobody said which.
    assertThat(twins(0, Optional.of("side"))).containsExactly(0.0, 0.0);
  }

  /** What counts to port and to starboard with a battery stowed so. */
  private static List<Double> twins(double y, Optional<String> in) {
    Box side = new Box(new Span(0, 1), new Span(0.3, 0.6), Span.ALL);
    Chamber twins =
        new Chamber("side", side, air(Seal.PROVEN, test(TODAY, 20, 0)), Optional.empty(), true);
    Kit battery = kit("battery", Vector3.of(0.5, y, 0.1), in);
    return twins.parts().stream()
        .map(
            part ->
                CountedBuoyancy.of(
                        part,
                        DRAWN,
                        List.of(battery),
                        ElectricalSystem.NONE,
                        List.of(),
                        TODAY,
                        HOUR)
                    .share())
        .toList();
  }

  @Test
  void a_chamber_with_an_opening_that_nothing_closes_fills_whatever_its_test_says() {
    for (Filling air :
        List.of(
            air(Seal.PROVEN, test(TODAY, 20, 0)),
            air(Seal.CLAIMED, Optional.empty()),
            air(Seal.OPEN, Optional.empty()))) {
      CountedBuoyancy counting =
          of(air, opening("fore hatch", Optional.empty(), Optional.of("locker")));
      assertThat(counting.share()).isZero();
      assertThat(counting.ifProven()).isZero();
      assertThat(BuoyancyReasonWords.of(counting.why(), UnitFormat.METRIC))
          .isEqualTo("has an opening that nothing closes, the fore hatch: it fills");
    }
  }

  @Test
  void an_opening_that_is_closed_or_leads_elsewhere_leaves_a_chamber_its_air() {
    Filling proven = air(Seal.PROVEN, test(TODAY, 20, 0));
    Optional<String> lid = Optional.of("hatch lid");
    for (Opening opening :
        List.of(
            opening("fore hatch", lid, Optional.of("locker")),
            opening("fore hatch", Optional.empty(), Optional.of("bow")),
            opening("notch", Optional.empty(), Optional.empty()))) {
      assertThat(of(proven, opening).share()).isEqualTo(1);
    }
    assertThat(
            of(
                    proven,
                    opening("fore hatch", lid, Optional.of("locker")),
                    opening("cable hole", Optional.empty(), Optional.of("locker")))
                .share())
        .isZero();
  }

  @Test
  void foam_beside_an_open_hole_keeps_its_lift() {
    Opening hole = opening("cable hole", Optional.empty(), Optional.of("locker"));
    assertThat(of(new Filling.Foam(true, true), hole).share()).isEqualTo(0.9);
  }

  @Test
  void an_open_hatch_on_the_boat_takes_its_chamber_from_what_counts() {
    Opening hatch =
        new Opening(
            "fore hatch",
            Vector3.of(2.5, 0, 0.2),
            0.3,
            true,
            Optional.empty(),
            Optional.of("fore locker"),
            Optional.empty());
    BoxBoat box = BoxBoat.of(3, 1.2, 0.4).proven("fore locker", new Span(2.5, 3));
    assertThat(box.model().spaces().get(0).counting().share()).isEqualTo(1);
    assertThat(box.opening(hatch).model().spaces().get(0).counting().share()).isZero();
  }

  /** The time for which people must be held up, s. */
  private static final double HOUR = 3600;

  private static Opening opening(String name, Optional<String> closedBy, Optional<String> into) {
    return new Opening(name, Vector3.of(0.5, 0, 0.3), 0.2, true, closedBy, into, Optional.empty());
  }

  private static CountedBuoyancy of(Filling filling, Opening... openings) {
    return CountedBuoyancy.of(
        new Chamber("locker", BOX, filling, Optional.empty(), false).parts().get(0),
        DRAWN,
        List.of(),
        ElectricalSystem.NONE,
        List.of(openings),
        TODAY,
        HOUR);
  }

  private static Kit kit(String name, Vector3 at, Optional<String> in) {
    return new Kit(name, 10, at, Optional.empty(), true, in);
  }

  private static Filling air(Seal seal, SealTest test) {
    return air(seal, Optional.of(test));
  }

  private static Filling air(Seal seal, Optional<SealTest> test) {
    return new Filling.Air(seal, test);
  }

  private static SealTest test(LocalDate date, double minutes, double litres) {
    return new SealTest(
        date, "water poured in", minutes, litres, "owner", Optional.of(DRAWN.depth()));
  }

  private static void counts(Filling filling, double share, double ifProven, String why) {
    CountedBuoyancy counting = of(filling);
    assertThat(counting.share()).isCloseTo(share, within(1e-12));
    assertThat(counting.ifProven()).isCloseTo(ifProven, within(1e-12));
    assertThat(BuoyancyReasonWords.of(counting.why(), UnitFormat.METRIC).replace('\u00a0', ' '))
        .isEqualTo(why);
  }

  private static CountedBuoyancy of(Filling filling, Optional<Double> litres) {
    return CountedBuoyancy.of(
        new Chamber("locker", BOX, filling, litres, false).parts().get(0),
        DRAWN,
        List.of(),
        ElectricalSystem.NONE,
        List.of(),
        TODAY,
        HOUR);
  }

  private static CountedBuoyancy of(Filling filling, Kit kit) {
    return CountedBuoyancy.of(
        new Chamber("locker", BOX, filling, Optional.empty(), false).parts().get(0),
        DRAWN,
        List.of(kit),
        ElectricalSystem.NONE,
        List.of(),
        TODAY,
        HOUR);
  }

  /** Its name says nothing: an owner calls it what he likes. */
  @Test
  void what_is_stated_to_be_the_battery_is_vented_whatever_it_is_called() {
    Kit bank = kit("house bank", Vector3.of(0.5, 0, 0.1), Optional.of("locker"));
    ElectricalSystem electrics = ElectricBoat.called("house bank", "pusher").electrics();
    Chamber locker =
        new Chamber("locker", BOX, air(Seal.PROVEN, test(TODAY, 20, 0)), Optional.empty(), false);
    CountedBuoyancy counting =
        CountedBuoyancy.of(
            locker.parts().get(0), DRAWN, List.of(bank), electrics, List.of(), TODAY, HOUR);
    assertThat(counting.share()).isZero();
    assertThat(BuoyancyReasonWords.of(counting.why(), UnitFormat.METRIC))
        .startsWith("holds the house bank: such a space is vented");
  }
}
