package thwartwise.rules;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;
import thwartwise.report.FormulaNoteWords;
import thwartwise.rules.CapacityFigure.FigureStatus;
import thwartwise.rules.Parameters.TableStep;

class OtherFormulasTest {
  private static final RuleSet OWN = RuleSetFile.cautiousDefault();

  static Stream<Reference> sizes() {
    return Reference.of("load-by-sizes");
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void three_sizes_make_a_load_and_a_buoyancy(Reference r) {
    double load = LengthBeamDepth.load(r.in("L"), r.in("B"), r.in("C"), 100);
    assertThat(load).isCloseTo(r.wanted("kg"), within(r.near("kg")));
    assertThat(LengthBeamDepth.buoyancy(r.in("rest"), load) * 1000)
        .isCloseTo(r.wanted("litres"), within(r.near("litres")));
  }

  // Box 4 x 1.5 x 0.6 m is its own three sizes; hull 90 of wood at 750: half of 120 litres counts.
  @Test
  void a_box_boat_is_read_for_its_three_sizes() {
    BoxBoat box =
        BoxBoat.of(4, 1.5, 0.6).hull(90, 0.2).weight("motor and gear", 35, Vector3.of(1, 0, 0.3));
    assertThat(LengthBeamDepth.depth(rated(box))).isCloseTo(0.6, within(1e-6));
    FormulaResult load = one("length x beam x depth", box, Map.of("kg-per-cubic-metre", 100.0));
    assertThat(load.value()).isCloseTo(360, within(1e-6));
    assertThat(load.caps()).isEqualTo(CapKind.LOAD);
    FormulaResult litres =
        one("buoyancy for a quarter of the load", box, Map.of("kg-per-cubic-metre", 100.0));
    assertThat(litres.value() * 1000).isCloseTo(215, within(1e-6));
    assertThat(litres.has().getAsDouble()).isCloseTo(0.060, within(1e-9));
  }

  static Stream<Reference> iron() {
    return Reference.of("iron-weights");
  }

  @ParameterizedTest
  @MethodSource("iron")
  void iron_is_fifteen_kilograms_a_person_and_some_for_gear(Reference r) {
    assertThat(IronTest.iron((int) r.in("people"), 15, 1.5))
        .isCloseTo(r.wanted("kg"), within(r.near("kg")));
  }

  // A weightless shell and one block of 0.1 m3 lift 100 kg; hull 60: 40 kg to spare. Iron weighs
  // 6/7 under water: 46.5 kg for three comes to 39.86, 61.5 kg for four to 52.7.
  @Test
  void iron_for_three_is_held_up_by_forty_kilograms_to_spare() {
    BoxBoat box =
        BoxBoat.of(3, 1.0, 0.5)
            .hull(60, 0.2)
            .weightlessShell()
            .proven("end", new Span(2.8, 3.0))
            .place("thwart", 1.5, 0.2, 0.3, 6);
    FormulaResult people = one("swamped with iron", box, Map.of("each", 15.0, "gear", 1.5));
    assertThat(people.persons()).hasValue(3);
    assertThat(FormulaNoteWords.of(people.note(), UnitFormat.METRIC))
        .isEqualTo("by lift alone: 46.5 kg of iron for so many and 61.5 kg for one more");
  }

  static Stream<Reference> gross() {
    return Reference.of("gross-load");
  }

  @ParameterizedTest
  @MethodSource("gross")
  void a_gross_load_less_the_kit_counts_people(Reference r) {
    BoxBoat box = BoxBoat.of(4, 1.5, 0.6).weight("all", r.in("kit"), Vector3.of(2, 0, 0.2));
    FormulaResult people =
        one("people from gross load", box, Map.of("gross-load", r.in("gross"), "each", 75.0));
    assertThat(people.value()).isCloseTo(r.wanted("kg"), within(r.near("kg")));
    assertThat(people.persons()).hasValue((int) r.wanted("persons"));
  }

  static Stream<Reference> lengths() {
    return Reference.of("people-by-length");
  }

  @ParameterizedTest
  @MethodSource("lengths")
  void the_shipped_table_by_length_gives_what_was_read(Reference r) {
    BoatModel model = BoxBoat.of(r.in("L"), 1.6, 0.5).model();
    assertThat(figures("Victoria, people by length", model))
        .singleElement()
        .satisfies(f -> assertThat(f.persons()).hasValue((int) r.wanted("persons")))
        .satisfies(f -> assertThat(f.standing()).isEqualTo(FigureStatus.BESIDE));
  }

  @Test
  void a_boat_longer_than_the_table_gets_no_number() {
    Parameters table = new Parameters(Map.of(), Map.of("table", List.of(new TableStep(3, 2))));
    FormulaResult none = PersonsByLength.of(rated(BoxBoat.of(3.1, 1.2, 0.5)), table).get(0);
    assertThat(none.caps()).isEqualTo(CapKind.NOTHING);
    assertThat(FormulaNoteWords.of(none.note(), UnitFormat.METRIC))
        .isEqualTo("does not apply: the boat is longer than its table");
  }

  static Stream<Reference> persons() {
    return Reference.of("person-elsewhere");
  }

  @ParameterizedTest
  @MethodSource("persons")
  void what_a_person_counts_elsewhere_is_what_was_read(Reference r) {
    BoatModel model = BoxBoat.of(3, 1.2, 0.5).model();
    CapacityFigure figure = figures("What a person counts elsewhere", model).get((int) r.in("set"));
    assertThat(figure.value()).isCloseTo(r.wanted("kg"), within(r.near("kg")));
    assertThat(figure.standing()).isEqualTo(FigureStatus.BESIDE);
  }

  // Box 4 x 1 in fresh water: 160 kg of hull and 80 kg of crew sink it 0.06 m of its 0.5.
  @Test
  void freeboard_is_measured_with_the_crew_aboard() {
    BoatModel model = BoxBoat.of(4, 1, 0.5).hull(160, 0.1).place("middle", 2, 0.1, 0.2, 1).model();
    Body crew = Body.seated("one", 80, model.boat().places().get(0), 0, 0.02);
    Parameters least = new Parameters(Map.of("least", 0.25), Map.of());
    FormulaResult worked =
        FreeboardWithCrew.of(RuleBook.rated(model, OWN, List.of(crew)), least).get(0);
    assertThat(worked.value()).isEqualTo(0.25);
    assertThat(worked.has().getAsDouble()).isCloseTo(0.44, within(1e-4));
    assertThat(FormulaNoteWords.of(worked.note(), UnitFormat.METRIC))
        .isEqualTo("with the crew recommended");
    assertThat(
            FormulaNoteWords.of(
                FreeboardWithCrew.of(RuleBook.rated(model, OWN, List.of()), least).get(0).note(),
                UnitFormat.METRIC))
        .isEqualTo("with nobody aboard");
  }

  private static List<CapacityFigure> figures(String set, BoatModel model) {
    return RuleSetFile.bundledRuleBook().figures(model).stream()
        .filter(f -> f.ruleSet().equals(set))
        .toList();
  }

  private static FormulaResult one(String formula, BoxBoat boat, Map<String, Double> told) {
    Parameters parameters = new Parameters(told, Map.of());
    return Formulas.named(formula).orElseThrow().working().of(rated(boat), parameters).get(0);
  }

  private static RatedBoat rated(BoxBoat boat) {
    return RuleBook.rated(boat.model(), OWN, List.of());
  }
}
