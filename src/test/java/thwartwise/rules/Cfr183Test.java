package thwartwise.rules;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Opening;
import thwartwise.boat.Propulsion;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;
import thwartwise.report.FormulaNoteWords;
import thwartwise.rules.Cfr183.EdgeWeight;

class Cfr183Test {
  private static final double HORSEPOWER = 745.7;

  /** What the shipped set gives of kilograms, in the order of its file. */
  private static List<CapacityFigure> loading(BoatModel model) {
    return RuleSetFile.bundledRuleBook().figures(model).stream()
        .filter(f -> f.ruleSet().equals("United States, 33 CFR 183"))
        .filter(f -> f.caps() != CapKind.POWER && f.caps() != CapKind.FLOTATION)
        .toList();
  }

  static Stream<Reference> persons() {
    return Stream.concat(Reference.of("cfr-persons"), Reference.of("cfr-threshold"));
  }

  @ParameterizedTest
  @MethodSource("persons")
  void pounds_become_people_as_printed(Reference r) {
    assertThat(Cfr183.persons(r.in("lb") * Cfr183.POUND)).isEqualTo((int) r.wanted("persons"));
  }

  // (lb + 32)/141 to the nearest whole, a half up: N people from (N - 1/2) 141 - 32 pounds.
  @ParameterizedTest
  @CsvSource({"38.5, 1", "179.5, 2", "320.5, 3", "461.5, 4"})
  void a_half_counts_up_and_a_hair_less_does_not(double pounds, int people) {
    assertThat(Cfr183.persons((pounds + 1e-6) * Cfr183.POUND)).isEqualTo(people);
    assertThat(Cfr183.persons((pounds - 1e-6) * Cfr183.POUND)).isEqualTo(people - 1);
  }

  static Stream<Reference> edges() {
    return Reference.of("cfr-edge");
  }

  @ParameterizedTest
  @MethodSource("edges")
  void the_edge_test_holds_only_under_550_pounds(Reference r) {
    double mass =
        Cfr183.personsOutboard(r.in("weight") * Cfr183.POUND, 0, r.in("A") * Cfr183.POUND);
    assertThat(mass / Cfr183.POUND).isCloseTo(r.wanted("lb"), within(r.near("lb")));
    assertThat(Cfr183.persons(mass)).isEqualTo((int) r.wanted("persons"));
  }

  static Stream<Reference> motors() {
    return Reference.of("cfr-motor");
  }

  @ParameterizedTest
  @MethodSource("motors")
  void a_motor_weighs_what_the_table_says(Reference r) {
    assertThat(MotorWeights.of(r.in("hp") * HORSEPOWER).total() / Cfr183.POUND)
        .isCloseTo(r.wanted("lb"), within(r.near("lb")));
  }

  // Paper: box 3 x 1.2 x 0.5 displaces 1800 kg level to its rail; hull 60 kg; rest 1740 kg.
  // 183.37 (FROM MEMORY): 0.3 x 1740 = 522 kg; 183.43 (READ): 0.9 x 522 = 469.8 kg.
  @Test
  void a_rowed_box_boat_carries_what_paper_says() {
    List<CapacityFigure> figures = loading(boat().model());
    assertThat(figures).hasSize(2).allMatch(CapacityFigure::takesPart);
    assertThat(figures.get(0).mass()).isCloseTo(522, within(1e-6));
    assertThat(figures.get(1).mass()).isCloseTo(469.8, within(1e-6));
    // (469.8/0.45359237 + 32)/141 = 7.57.
    assertThat(figures.get(1).persons()).hasValue(8);
  }

  @Test
  void a_small_motor_takes_25_pounds_off_the_people() {
    List<CapacityFigure> figures =
        loading(boat().driven(new Propulsion.Outboard(2 * HORSEPOWER)).model());
    assertThat(figures.get(1).mass()).isCloseTo(469.8 - 25 * 0.45359237, within(1e-6));
  }

  @Test
  void an_opening_lower_than_the_rail_sets_the_level_immersion() {
    BoatModel model =
        boat().opening(new Opening("cut-out", Vector3.of(0, 0, 0.4), 0.3, true)).model();
    assertThat(loading(model).get(0).mass())
        .isCloseTo(0.3 * (3 * 1.2 * 0.4 * 1000 - 60), within(1e-6));
  }

  // Over 2 hp: (1800 - 60)/5 = 348 kg; 10 hp with its gear 185 lb = 83.9 kg; rest 264.1 kg = 582
  // lb,
  // so no edge test.
  @Test
  void an_outboard_box_boat_carries_what_paper_says() {
    List<CapacityFigure> figures =
        loading(boat().driven(new Propulsion.Outboard(10 * HORSEPOWER)).model());
    assertThat(figures.get(0).mass()).isCloseTo(348, within(1e-6));
    assertThat(figures.get(1).mass()).isCloseTo(348 - 185 * 0.45359237, within(1e-6));
  }

  // Paper for the edge weight: hull 60 kg at 0.2, A at (0.4, 0.25) to port, rail at the water on
  // that side. With the whole bottom under: draft d = (60 + A)/3600, tan = (0.5 - d)/0.6 <= d/0.6
  // needs d >= 0.25, that is A >= 840; below it the wet part is a triangle of legs 0.5 up the side
  // and 0.5/tan along the bottom: 0.125/tan = (60 + A)/3000. Balance: moments about the low chine.
  @Test
  void the_edge_weight_brings_the_rail_to_the_water() {
    BoatModel model = boat().place("thwart", 1.5, 0.25, 0.4, 2).model();
    double edge = EdgeWeight.most(model);
    double low = 0;
    double high = 840;
    for (int i = 0; i < 60; i++) {
      double a = (low + high) / 2;
      double tan = 0.125 * 3000 / (60 + a);
      double phi = Math.atan(tan);
      double y = (60 * 0 + a * 0.4) / (60 + a);
      double z = (60 * 0.2 + a * 0.25) / (60 + a);
      double by = 0.6 - 0.5 / tan / 3;
      double bz = 0.5 / 3;
      // G outside of B, seen level, turns it further over: then this weight is too much.
      boolean over = (y - by) * Math.cos(phi) + (z - bz) * Math.sin(phi) > 0;
      if (over) {
        high = a;
      } else {
        low = a;
      }
    }
    assertThat(edge).isBetween(low - 1.5, low);
  }

  @Test
  void a_boat_without_places_has_no_edge_weight() {
    assertThat(EdgeWeight.most(boat().model())).isZero();
  }

  @Test
  void a_canoe_and_a_long_boat_are_outside_the_rule() {
    BoatModel canoe = BoxBoat.of(4.5, 0.9, 0.35).hull(30, 0.15).model();
    assertThat(loading(canoe))
        .noneMatch(CapacityFigure::takesPart)
        .extracting(f -> FormulaNoteWords.of(f.note(), UnitFormat.METRIC))
        .containsOnly(
            "does not apply: the boat is a canoe by its form and it is written for open boats");
    BoatModel launch = BoxBoat.of(6.1, 1.8, 0.6).hull(200, 0.25).model();
    assertThat(loading(launch)).noneMatch(CapacityFigure::takesPart);
    BoatModel justUnder = BoxBoat.of(6.09, 1.8, 0.6).hull(200, 0.25).model();
    assertThat(loading(justUnder)).allMatch(CapacityFigure::takesPart);
  }

  private static BoxBoat boat() {
    return BoxBoat.of(3, 1.2, 0.5).hull(60, 0.2);
  }

  @Test
  void a_motor_beyond_the_table_gets_no_figure_from_it() {
    // The table of motor weights as noted in the references ends at 34.9 hp.
    assertThat(MotorWeights.covers(34.9 * 745.7)).isTrue();
    BoatModel boat =
        BoatModel.of(
            BoxBoat.of(4, 1.5, 0.5)
                .place("thwart", 2, 0.25, 0.5, 2)
                .driven(new Propulsion.Outboard(30000))
                .boat(),
            BoxBoat.TODAY);
    assertThat(loading(boat))
        .noneMatch(CapacityFigure::takesPart)
        .allSatisfy(
            f ->
                assertThat(FormulaNoteWords.of(f.note(), UnitFormat.METRIC))
                    .isEqualTo(
                        "does not apply: the table of motor weights known here ends at 34.9 hp"));
  }
}
