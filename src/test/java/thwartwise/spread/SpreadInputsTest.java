package thwartwise.spread;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.hull.Station;
import thwartwise.inspection.PlainHulls;
import thwartwise.loadcase.Allowance;
import thwartwise.rules.RuleSet;

class SpreadInputsTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  private static List<SpreadInput> of(Boat boat, InputKind... better) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    return SpreadInputs.of(boat, model, RULES, RuleSetFile.measuringSpreads(), Set.of(better), 2);
  }

  private static SpreadInput of(List<SpreadInput> inputs, InputKind kind) {
    return inputs.stream().filter(i -> i.kind() == kind).findFirst().orElseThrow();
  }

  /** Own part and that of the scales, which are independent, add up in squares. */
  @Test
  void what_nobody_said_is_no_surer_than_the_allowance() {
    Boat boat = PlainHulls.skiff();
    Allowance unsaid = Allowance.of(RULES, BoatModel.of(boat, PlainHulls.TODAY));
    List<SpreadInput> inputs = of(boat);
    double scales = of(inputs, InputKind.SCALES).spread();
    double mass = unsaid.massFactor() - 1;

    SpreadInput hull = of(inputs, InputKind.HULL_MASS);
    assertThat(hull.distribution().mean()).isCloseTo(boat.hull().mass(), within(1e-9));
    assertThat(Math.hypot(hull.spread() / boat.hull().mass(), scales))
        .isCloseTo(mass, within(1e-12));
    assertThat(Math.hypot(of(inputs, InputKind.PERSON_MASS).spread(), scales))
        .isCloseTo(mass, within(1e-12));
    assertThat(of(inputs, InputKind.CHAMBER_VOLUME).spread())
        .isCloseTo(1 - unsaid.volumeFactor(), within(1e-12));
    assertThat(of(inputs, InputKind.EDGE_HEIGHTS).spread()).isEqualTo(unsaid.freeboardLoss());
  }

  @Test
  void few_stations_leave_more_of_the_shape_unsure() {
    Boat skiff = PlainHulls.skiff();
    List<Station> all = skiff.hull().stations();
    List<Station> few = List.of(all.get(0), all.get(2), all.get(4));
    List<SpreadInput> inputs = of(skiff.withHull(skiff.hull().withStations(few)));

    // A fifth and 40 mm, as the default set has it for three stations.
    assertThat(of(inputs, InputKind.CHAMBER_VOLUME).spread()).isCloseTo(0.2, within(1e-12));
    assertThat(of(inputs, InputKind.EDGE_HEIGHTS).spread()).isCloseTo(0.04, within(1e-12));
  }

  @Test
  void people_chambers_and_places_are_each_by_themselves() {
    Boat boat = PlainHulls.skiff();
    List<SpreadInput> inputs = of(boat);

    assertThat(inputs.stream().filter(i -> i.kind() == InputKind.PERSON_MASS)).hasSize(2);
    assertThat(inputs.stream().filter(i -> i.kind() == InputKind.CHAMBER_VOLUME))
        .extracting(SpreadInput::item)
        .containsExactly("bow locker", "stern tank", "thwart");
    assertThat(inputs.stream().filter(i -> i.kind() == InputKind.SEAT_HEIGHT))
        .extracting(SpreadInput::item)
        .containsExactly("middle thwart", "stern seat", "bow seat");
    assertThat(inputs.stream().filter(i -> i.kind() == InputKind.HALF_BREADTHS)).hasSize(5);
  }

  @Test
  void each_value_at_its_mean_is_the_boat_as_measured() {
    Boat boat = PlainHulls.skiff();
    VariedBoat measured = VariedBoat.asMeasured(boat, 2);
    for (SpreadInput input : of(boat)) {
      VariedBoat same = input.variation().of(measured, input.distribution().mean());
      assertThat(same.people()).as("%s", input.kind()).isEqualTo(measured.people());
      if (input.kind() != InputKind.HULL_CENTRE_ALONG
          && input.kind() != InputKind.HULL_CENTRE_HEIGHT) {
        assertThat(mass(same)).isCloseTo(mass(measured), within(1e-9));
        assertThat(same.boat().hull().stations()).isEqualTo(boat.hull().stations());
      }
    }
  }

  private static double mass(VariedBoat boat) {
    return boat.boat().hull().mass() + boat.boat().kitMass();
  }

  @Test
  void each_measurement_that_is_off_makes_another_boat() {
    Boat boat = PlainHulls.skiff();
    VariedBoat measured = VariedBoat.asMeasured(boat, 2);
    for (SpreadInput input : of(boat)) {
      double off = input.distribution().mean() + input.spread();
      assertThat(input.variation().of(measured, off))
          .as("%s %s", input.kind(), input.item())
          .isNotEqualTo(measured);
    }
  }

  @Test
  void the_scales_are_off_for_everything_weighed_on_them() {
    Boat boat = PlainHulls.skiff();
    VariedBoat heavier =
        of(of(boat), InputKind.SCALES).variation().of(VariedBoat.asMeasured(boat, 2), 1.1);

    assertThat(heavier.boat().hull().mass()).isCloseTo(1.1 * boat.hull().mass(), within(1e-9));
    assertThat(heavier.boat().kitMass()).isCloseTo(1.1 * boat.kitMass(), within(1e-9));
    assertThat(heavier.people()).containsExactly(1.1, 1.1);
  }

  @Test
  void a_better_way_leaves_less_of_a_spread() {
    List<SpreadInput> inputs = of(PlainHulls.skiff());

    // 2 % of the jug instead of 10 %; 5 mm from a taut line instead of 20 mm.
    assertThat(of(inputs, InputKind.CHAMBER_VOLUME).left()).isCloseTo(0.2, within(1e-9));
    assertThat(of(inputs, InputKind.EDGE_HEIGHTS).left()).isCloseTo(0.25, within(1e-9));
    assertThat(of(inputs, InputKind.SCALES).left()).isEqualTo(1);
  }

  @Test
  void what_was_measured_with_care_is_surer_and_nothing_else_is() {
    Boat boat = PlainHulls.skiff();
    List<SpreadInput> unsaid = of(boat);
    List<SpreadInput> better = of(boat, InputKind.EDGE_HEIGHTS, InputKind.HULL_MASS);

    assertThat(of(better, InputKind.EDGE_HEIGHTS).spread()).isCloseTo(0.005, within(1e-12));
    assertThat(of(better, InputKind.HULL_MASS).spread())
        .isCloseTo(0.02 * boat.hull().mass(), within(1e-9));
    assertThat(of(better, InputKind.HULL_MASS).left()).isCloseTo(1, within(1e-12));
    // The scales' part, 0.6, of 2 % instead of 5 %.
    assertThat(of(better, InputKind.SCALES).spread()).isCloseTo(0.012, within(1e-12));
    assertThat(of(better, InputKind.CHAMBER_VOLUME).spread())
        .isEqualTo(of(unsaid, InputKind.CHAMBER_VOLUME).spread());
  }

  /** However few stations there are and whatever the allowances: care makes nothing less sure. */
  @Test
  void care_never_makes_a_measurement_less_sure() {
    Boat boat = PlainHulls.skiff();
    List<SpreadInput> unsaid = of(boat);
    List<SpreadInput> better = of(boat, InputKind.values());
    for (int i = 0; i < unsaid.size(); i++) {
      assertThat(better.get(i).spread()).isLessThanOrEqualTo(unsaid.get(i).spread());
    }
  }

  /** By hand: 4 % of its own becomes three times as much; scales say nothing of a guess. */
  @Test
  void a_guess_is_worse_than_what_nobody_said_and_of_one_thing_alone() {
    Boat boat = PlainHulls.skiff();
    Boat said =
        boat.withMethods(
            List.of(
                new MeasuringMethod(
                    MeasurementKind.HULL_WEIGHT, Optional.empty(), MeasuringWay.GUESS),
                new MeasuringMethod(
                    MeasurementKind.SEAT_HEIGHTS,
                    Optional.of(boat.places().get(0).name()),
                    MeasuringWay.STEEL_TAPE)));
    List<SpreadInput> unsaid = of(boat);
    List<SpreadInput> inputs = of(said);

    assertThat(of(inputs, InputKind.HULL_MASS).spread())
        .isCloseTo(3 * 0.04 * boat.hull().mass(), within(1e-9));
    assertThat(of(inputs, InputKind.SCALES).spread())
        .isEqualTo(of(unsaid, InputKind.SCALES).spread());
    List<SpreadInput> seats =
        inputs.stream().filter(i -> i.kind() == InputKind.SEAT_HEIGHT).toList();
    assertThat(seats.get(0).spread()).isCloseTo(0.003, within(1e-12));
    assertThat(seats.subList(1, seats.size())).allMatch(i -> i.spread() == 0.02);
  }

  /** By hand: a taut line leaves 5 mm, three stations 20 mm beyond the 20 mm of five. */
  @Test
  void what_few_stations_leave_out_stays_however_well_the_edges_were_measured() {
    Boat skiff = PlainHulls.skiff();
    List<Station> all = skiff.hull().stations();
    Boat few =
        skiff
            .withHull(skiff.hull().withStations(List.of(all.get(0), all.get(2), all.get(4))))
            .withMethods(
                List.of(
                    new MeasuringMethod(
                        MeasurementKind.EDGE_HEIGHTS, Optional.empty(), MeasuringWay.TAUT_LINE)));

    assertThat(of(of(few), InputKind.EDGE_HEIGHTS).spread())
        .isCloseTo(Math.hypot(0.005, 0.020), within(1e-12));
  }
}
