package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Chamber.Twin;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;
import thwartwise.report.BuoyancyReasonWords;

/**
 * Side seats on the box of {@link OnPaper}, drawn once: 2 m long, 0.2 m wide, 0.3 m high, so 120
 * litres each; the hull weighs 100 kg and displaces nothing.
 */
class TwinChambersTest {
  private static final Box SEAT = new Box(new Span(0.5, 2.5), new Span(0.4, 0.6), new Span(0, 0.3));
  private static final double LITRES = 120;

  private static Filling air(Seal seal, LocalDate tested) {
    SealTest test = new SealTest(tested, "water poured in", 20, 0, "builder");
    return new Filling.Air(seal, seal == Seal.PROVEN ? Optional.of(test) : Optional.empty());
  }

  private static Filling proven() {
    return air(Seal.PROVEN, BoxBoat.TODAY);
  }

  private static Filling claimed() {
    return air(Seal.CLAIMED, BoxBoat.TODAY);
  }

  private static Chamber seats(Box drawn, Filling one, Optional<Filling> other) {
    return new Chamber(
        "side seat", drawn, one, Optional.empty(), true, false, new Twin(other, Optional.empty()));
  }

  private static LoadedBoat swamped(Chamber chamber) {
    return OnPaper.trial(OnPaper.boat(100).weightlessShell().chamber(chamber));
  }

  private static double lift(Chamber chamber) {
    return swamped(chamber).spareBuoyancy(List.of());
  }

  @Test
  void one_test_counts_one_side_and_the_lift_is_that_of_one_chamber() {
    Chamber alone = new Chamber("seat", SEAT, proven(), Optional.empty(), false);
    double one = lift(seats(SEAT, proven(), Optional.of(claimed())));
    assertThat(one).isCloseTo(LITRES - 100, within(0.01)).isCloseTo(lift(alone), within(1e-9));
    assertThat(lift(seats(SEAT, claimed(), Optional.of(proven())))).isCloseTo(one, within(1e-9));
    assertThat(lift(seats(SEAT, proven(), Optional.of(proven()))))
        .isCloseTo(2 * LITRES - 100, within(0.01));
  }

  @Test
  void a_file_with_one_test_keeps_its_meaning_and_says_that_it_stands_for_both() {
    Chamber old = seats(SEAT, proven(), Optional.empty());
    assertThat(lift(old)).isCloseTo(2 * LITRES - 100, within(0.01));
    assertThat(swamped(old).model().spaces())
        .extracting(s -> BuoyancyReasonWords.of(s.counting().why(), UnitFormat.METRIC))
        .containsOnly(
            "proven 2026-11-25 by builder; this one test stands for both sides, and each needs one"
                + " of its own");
    assertThat(swamped(seats(SEAT, proven(), Optional.of(proven()))).model().spaces())
        .extracting(s -> BuoyancyReasonWords.of(s.counting().why(), UnitFormat.METRIC))
        .containsOnly("proven 2026-11-25 by builder");
  }

  @Test
  void each_bears_its_side_as_drawn_and_its_own_reason() {
    List<Space> drawnToPort =
        swamped(seats(SEAT, proven(), Optional.of(claimed()))).model().spaces();
    assertThat(drawnToPort)
        .extracting(Space::name)
        .containsExactly("side seat, port", "side seat, starboard");
    assertThat(drawnToPort).extracting(s -> s.counting().share()).containsExactly(1.0, 0.0);
    assertThat(drawnToPort.get(1).solid().centroid().y()).isCloseTo(-0.5, within(1e-6));
    assertThat(swamped(seats(SEAT.mirrored(), proven(), Optional.of(claimed()))).model().spaces())
        .extracting(Space::name)
        .containsExactly("side seat, starboard", "side seat, port");
  }

  @Test
  void a_boat_with_one_side_tested_is_not_the_same_on_both_sides() {
    assertThat(swamped(seats(SEAT, proven(), Optional.empty())).model().isSymmetric()).isTrue();
    assertThat(swamped(seats(SEAT, proven(), Optional.of(claimed()))).model().isSymmetric())
        .isFalse();
    assertThat(swamped(poured(0.09, Optional.of(0.1))).model().isSymmetric()).isFalse();
  }

  @Test
  void a_twin_tested_too_long_ago_counts_for_nothing_by_itself() {
    Filling old = air(Seal.PROVEN, BoxBoat.TODAY.minusMonths(13));
    assertThat(lift(seats(SEAT, proven(), Optional.of(old)))).isCloseTo(20, within(0.01));
    assertThat(lift(seats(SEAT, old, Optional.of(proven())))).isCloseTo(20, within(0.01));
  }

  // 90 of 120 litres poured into one: both hold no more until the other is poured too.
  @Test
  void litres_poured_into_one_stand_for_both_and_those_of_each_for_itself() {
    assertThat(lift(poured(0.09, Optional.empty()))).isCloseTo(2 * 90 - 100, within(0.01));
    assertThat(lift(poured(0.09, Optional.of(0.1)))).isCloseTo(90 + 100 - 100, within(0.01));
    Chamber twinOnly =
        new Chamber(
            "side seat",
            SEAT,
            proven(),
            Optional.empty(),
            true,
            false,
            new Twin(Optional.empty(), Optional.of(0.09)));
    assertThat(lift(twinOnly)).isCloseTo(2 * 90 - 100, within(0.01));
  }

  private static Chamber poured(double one, Optional<Double> other) {
    return new Chamber(
        "side seat",
        SEAT,
        proven(),
        Optional.of(one),
        true,
        false,
        new Twin(Optional.of(proven()), other));
  }

  @Test
  void something_known_anew_of_one_leaves_the_other_as_it_was() {
    Chamber old = seats(SEAT, claimed(), Optional.empty());
    for (ChamberPart part : old.parts()) {
      Chamber after = old.filledWith(part, proven());
      assertThat(after.parts())
          .allMatch(p -> p.filling().equals(p.name().equals(part.name()) ? proven() : claimed()));
      assertThat(lift(after)).isCloseTo(20, within(0.01));
    }
  }
}
