package thwartwise.rules;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Propulsion;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;
import thwartwise.report.FormulaNoteWords;
import thwartwise.rules.Cfr183Power.FlatBottom;

class Cfr183PowerTest {
  private static final double FOOT = 0.3048;
  private static final Parameters UNKNOWN =
      new Parameters(Map.of("remote-steering", 0.0), Map.of());
  private static final Parameters REMOTE = new Parameters(Map.of("remote-steering", 1.0), Map.of());

  static Stream<Reference> factors() {
    return Reference.of("cfr-power");
  }

  @ParameterizedTest
  @MethodSource("factors")
  void a_factor_becomes_horsepower_as_printed(Reference r) {
    double printed = Cfr183Power.asPrinted(r.in("factor"), r.in("remote") > 0, r.in("flat") > 0);
    assertThat(printed).isCloseTo(r.wanted("hp"), within(r.near("hp")));
  }

  static Stream<Reference> sizes() {
    return Reference.of("cfr-power-sizes");
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void sizes_in_feet_become_horsepower_through_metres(Reference r) {
    double factor = Cfr183Power.factor(r.in("length") * FOOT, r.in("breadth") * FOOT);
    boolean remote = r.in("remote") > 0;
    boolean flat = r.in("flat") > 0;
    assertThat(Cfr183Power.asPrinted(factor, remote, flat))
        .isCloseTo(r.wanted("hp"), within(r.near("hp")));
    assertThat(Cfr183Power.horsepower(factor, remote, flat))
        .isCloseTo(r.wanted("unraised"), within(r.near("unraised")));
  }

  @Test
  void the_published_answer_known_to_be_wrong_is_not_met() {
    Reference wrong =
        Reference.read(Reference.KNOWN_WRONG).stream()
            .filter(r -> r.kind().equals("cfr-power-sizes"))
            .findFirst()
            .orElseThrow();
    double factor = Cfr183Power.factor(wrong.in("length") * FOOT, wrong.in("breadth") * FOOT);
    assertThat(Cfr183Power.horsepower(factor, false, false)).isNotEqualTo(wrong.wanted("hp"));
  }

  // The rule rounds 45.6 to 46 and gives 15 hp; a factor that is not 46 is not taken for it.
  @ParameterizedTest
  @CsvSource({"35.9, 3, 5", "39.6, 5, 7.5", "45.6, 10, 15", "52.4, 15, 15", "53, 17.4, 20"})
  void what_the_rule_rounds_up_is_printed_and_not_used(double factor, double used, double printed) {
    assertThat(Cfr183Power.horsepower(factor, false, false)).isCloseTo(used, within(1e-9));
    assertThat(Cfr183Power.asPrinted(factor, false, false)).isEqualTo(printed);
  }

  // 3 m x 1.2 m = 9.8425 ft x 3.937 ft = 38.75: whole 38, 5 hp; flat bottomed one step down, 3 hp.
  @Test
  void a_flat_bottomed_box_boat_steps_down() {
    List<FormulaResult> worked = Cfr183Power.of(rated(box(3, 1.2, 1500)), UNKNOWN);
    assertThat(worked).hasSize(1);
    assertThat(worked.get(0).value()).isCloseTo(3 * 745.7, within(1e-9));
    assertThat(worked.get(0).has()).hasValue(1500);
    assertThat(FormulaNoteWords.of(worked.get(0).note(), UnitFormat.METRIC))
        .isEqualTo(
            "3.0 hp for a factor of 38.7, flat bottom and hard chine, taken as without remote"
                + " steering");
  }

  // 4 m x 1.5 m = 64.58: 0.5 F - 15 = 17.29 hp, by the rule's raising 20; with remote 2 F - 90.
  @Test
  void a_larger_box_boat_is_told_the_raised_answer_and_keeps_the_lower() {
    FormulaResult worked = Cfr183Power.of(rated(box(4, 1.5, 1500)), UNKNOWN).get(0);
    double factor = 4 * 1.5 / FOOT / FOOT;
    assertThat(worked.value()).isCloseTo((0.5 * factor - 15) * 745.7, within(1e-6));
    assertThat(FormulaNoteWords.of(worked.note(), UnitFormat.METRIC))
        .endsWith("; the rule's own rounding makes that 20.0 hp, which is not used");
    assertThat(Cfr183Power.of(rated(box(4, 1.5, 1500)), REMOTE).get(0).value())
        .isCloseTo((2 * factor - 90) * 745.7, within(1e-6));
  }

  @Test
  void a_rowed_boat_is_asked_for_no_motor() {
    BoxBoat rowed = BoxBoat.of(4, 1.5, 0.5);
    assertThat(Cfr183Power.of(rated(rowed), UNKNOWN)).isEmpty();
  }

  // A bottom that rises as steeply as one in two is no flat one.
  @Test
  void a_bottom_with_a_rise_is_not_flat() {
    assertThat(FlatBottom.is(box(3, 1.2, 1500).boat().hull())).isTrue();
    assertThat(FlatBottom.is(Wedges.hull(0.3))).isFalse();
  }

  // The transom of this hull is 0.2 m broad, under half of 1.2; its after quarter is broader.
  @Test
  void a_pinched_transom_is_measured_by_the_after_quarter() {
    RatedBoat pinched = rated(Wedges.pinched());
    double breadth = Cfr183Power.breadth(pinched);
    assertThat(breadth).isGreaterThan(0.2).isLessThanOrEqualTo(1.2);
    assertThat(Vector3.of(0, breadth, 0).y())
        .isEqualTo(
            pinched
                .model()
                .form()
                .outside()
                .within(
                    new thwartwise.geometry.Box(
                        new thwartwise.geometry.Span(0, 1),
                        thwartwise.geometry.Span.ALL,
                        thwartwise.geometry.Span.ALL))
                .extent(Vector3.of(0, 1, 0))
                .length());
  }

  private static BoxBoat box(double length, double beam, double watts) {
    return BoxBoat.of(length, beam, 0.5).driven(new Propulsion.Outboard(watts));
  }

  private static RatedBoat rated(BoxBoat boat) {
    return rated(boat.model());
  }

  private static RatedBoat rated(thwartwise.boat.BoatModel model) {
    return RuleBook.rated(model, RuleSetFile.cautiousDefault(), List.of());
  }
}
