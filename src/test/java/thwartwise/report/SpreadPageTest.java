package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thwartwise.boat.Boat;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Unit;
import thwartwise.inspection.PlainHulls;
import thwartwise.loadcase.Allowance;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.CrewChance;
import thwartwise.spread.FigureSpread;
import thwartwise.spread.InputKind;
import thwartwise.spread.Remeasurement;
import thwartwise.uncertainty.CoverageInterval;

class SpreadPageTest {
  private static final Boat BOAT = PlainHulls.skiff();
  private static final CheckQuestion FREEBOARD =
      CheckQuestion.of(CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD);
  private static final CheckQuestion HEEL =
      CheckQuestion.of(CheckId.STIFF_OFF_THE_MIDDLE, Measure.HEEL);

  private static FigureSpread freeboard(double share) {
    Margin margin = Margin.atLeast(0.20, OptionalDouble.of(0.2449), Unit.METRE);
    return new FigureSpread(
        2, FREEBOARD, margin, 0.0241, new CoverageInterval(0.1967, 0.2931), share);
  }

  private static FigureSpread heel(double spread) {
    Margin margin = Margin.atMost(0.4, OptionalDouble.of(0.3), Unit.DEGREE);
    return new FigureSpread(2, HEEL, margin, spread, new CoverageInterval(0.26, 0.34), 0.999);
  }

  private static Remeasurement again(InputKind kind, String thing, int people) {
    return new Remeasurement(kind, thing, FREEBOARD, 0.618, people);
  }

  /** Two adults recommended. */
  private static BoatSpread spread(
      List<Double> shares, List<FigureSpread> figures, List<Remeasurement> again) {
    return new BoatSpread(
        95,
        2,
        95,
        2,
        95,
        IntStream.range(0, shares.size())
            .mapToObj(i -> new CrewChance(i + 1, shares.get(i)))
            .toList(),
        figures,
        List.of(),
        List.of(),
        again,
        30,
        new Allowance(1.05, 0.9, 0.02));
  }

  @Test
  void what_was_measured_with_care_is_named() {
    BoatSpread plain = spread(List.of(1.0, 1.0), List.of(), List.of());
    assertThat(
            SpreadPage.of(
                BOAT, Optional.of(plain), Set.of(InputKind.EDGE_HEIGHTS, InputKind.HULL_MASS)))
        .contains(
            """
            Measured with care: hull weight and edge heights. Else a mass may be off by 5 %,
            a chamber by 10 %, edges and seats by 2 cm (one standard deviation, judgement).
            """);
  }

  @Test
  void what_somebody_said_of_how_it_was_measured_is_told() {
    Boat said =
        BOAT.withMethods(
            List.of(
                new MeasuringMethod(
                    MeasurementKind.HULL_WEIGHT, Optional.empty(), MeasuringWay.BATHROOM_SCALES),
                new MeasuringMethod(
                    MeasurementKind.KIT_WEIGHTS, Optional.of("battery"), MeasuringWay.GUESS)));
    BoatSpread spread = spread(List.of(1.0, 1.0), List.of(), List.of());

    assertThat(SpreadPage.of(said, Optional.of(spread), Set.of()))
        .contains(
            """
            As said: hull weight: bathroom scales and kit weights of the battery: guess.
            Else a mass may be off by 5 %""");
  }

  private static String page(BoatSpread spread) {
    return SpreadPage.of(BOAT, Optional.of(spread), Set.of());
  }

  @Test
  void a_sure_answer_tells_in_how_many_boats_it_would_be_fewer() {
    assertThat(
            page(
                spread(
                    List.of(1.0, 0.9741, 0.2),
                    List.of(freeboard(0.9741), heel(0.02)),
                    List.of(again(InputKind.HULL_MASS, "", 3)))))
        .isEqualTo(
            """
            skiff: how sure the answer is
            =============================
            Two adults of 95 kg recommended; in 3 of 100 boats measured like this it would
            be one.

            With two adults            From      Middle    To        Limit     Met in
            -------------------------- --------- --------- --------- --------- ----------
            freeboard at rest          0.19 m    0.24 m    0.30 m    0.20 m    97 of 100
            sitting stiff a little off 14.8 deg  17.2 deg  19.5 deg  22.9 deg  99 of 100
            the middle

            * Worth ten minutes: weigh the bare hull, one end after the other on bathroom
              scales on hard ground (it makes up 62 % of the spread of: freeboard at rest).
              If it comes out well, inspect may then say three adults.
            Nobody said how it was measured: a mass may be off by 5 %, a chamber by 10 %,
            edges and seats by 2 cm (one standard deviation, judgement).
            Kilograms for each number of people and each seating are reported as far as 95
            of 100 boats carry them. Waves, wind and what people do are not in it; it never
            allows more than inspect. Local rules come first, and whoever is in charge of
            the water has the last word.
            """);
  }

  /** Two were found by the search; one of them was sure enough. */
  @Test
  void an_answer_that_is_not_sure_enough_is_lowered_and_says_from_what() {
    BoatSpread lowered =
        new BoatSpread(
            95,
            2,
            95,
            1,
            95,
            List.of(new CrewChance(1, 0.985), new CrewChance(2, 0.88)),
            List.of(freeboard(0.985)),
            List.of(),
            List.of(),
            List.of(
                again(InputKind.EDGE_HEIGHTS, "", 2),
                again(InputKind.CHAMBER_VOLUME, "bow locker", 1)),
            30,
            new Allowance(1.05, 0.9, 0.02));
    String page = page(lowered);

    assertThat(page)
        .contains(
            """
            One adult of 95 kg recommended; in 2 of 100 boats measured like this it would be
            none. Two adults would be too many: fewer than 95 of 100 boats measured like
            this carry them.
            """)
        .contains("If it\n  comes out well, inspect may then say two adults.")
        .contains(
            """
            * Worth ten minutes: fill the bow locker from a litre jug and count (it makes up
              62 % of the spread of: freeboard at rest).
            """);
    assertThat(page.lines()).hasSizeLessThanOrEqualTo(24).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_boat_that_carries_nobody_says_what_would_have_to_be_measured_better() {
    BoatSpread nobody =
        new BoatSpread(
            95,
            0,
            95,
            0,
            95,
            List.of(new CrewChance(1, 0.6)),
            List.of(),
            List.of(),
            List.of(),
            List.of(again(InputKind.HULL_MASS, "", 1)),
            30,
            new Allowance(1.05, 0.9, 0.02));

    assertThat(page(nobody))
        .contains("Nobody is recommended in this boat")
        .contains("Worth ten minutes: weigh the bare hull")
        .contains("inspect may then say one adult.");
  }

  @Test
  void a_figure_that_is_lost_one_spread_away_has_no_range() {
    String page =
        page(spread(List.of(1.0, 0.0), List.of(heel(Double.POSITIVE_INFINITY)), List.of()));

    assertThat(page)
        .contains("the middle")
        .contains("lost one spread away")
        .contains("No single measurement would make it much surer.");
  }

  @Test
  void a_spread_that_no_boat_of_all_drawn_goes_beyond_is_not_told_as_none() {
    assertThat(page(spread(List.of(1.0, 1.0), List.of(freeboard(1)), List.of())))
        .contains("in fewer than 1 of 100 boats measured like this\nit would be fewer.");
  }

  @Test
  void a_boat_in_which_nobody_is_recommended_is_sent_to_inspect() {
    assertThat(SpreadPage.of(BOAT, Optional.empty(), Set.of()))
        .isEqualTo(
            """
            skiff: how sure the answer is
            =============================
            Nobody is recommended in this boat, so there is no answer to be sure of. Type
            inspect for the reasons.
            """);
  }

  @ParameterizedTest
  @EnumSource(InputKind.class)
  void every_kind_of_measurement_says_how_to_take_it_again_and_never_that_a_boat_is_safe(
      InputKind kind) {
    String page = page(spread(List.of(1.0, 1.0), List.of(), List.of(again(kind, "stern tank", 2))));

    assertThat(page).contains("Worth ten minutes: ").doesNotContain("safe");
  }

  @Test
  void a_block_of_foam_is_measured_again_and_no_jug_fills_it() {
    Boat boat = PlainHulls.dory();
    BoatSpread spread =
        spread(
            List.of(1.0, 1.0),
            List.of(),
            List.of(again(InputKind.CHAMBER_VOLUME, "side foam, port", 2)));

    assertThat(SpreadPage.of(boat, Optional.of(spread), Set.of()))
        .contains("Worth ten minutes: measure the side foam, port again, the block and not the")
        .doesNotContain("jug");
  }
}
