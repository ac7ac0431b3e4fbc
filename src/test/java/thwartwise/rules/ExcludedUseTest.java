package thwartwise.rules;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.boat.SomeWaters;
import thwartwise.boat.Waters;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;
import thwartwise.report.ExcludedUseWords;

/** Boats and waters for which nothing is recommended, and those just inside. */
class ExcludedUseTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  private static List<String> reasons(BoatModel model) {
    return ExcludedUse.of(model, RULES).stream()
        .map(use -> ExcludedUseWords.of(use, new UnitFormat(model.boat().units())))
        .toList();
  }

  private static List<String> on(SomeWaters waters) {
    return reasons(
        BoatModel.of(BoxBoat.of(4, 1.5, 0.6).boat().withWaters(waters.waters()), BoxBoat.TODAY));
  }

  private static List<String> driven(Propulsion by) {
    return reasons(BoxBoat.of(4, 1.5, 0.6).driven(by).model());
  }

  private static SomeWaters sheltered() {
    return SomeWaters.sheltered();
  }

  @Test
  void a_plain_boat_on_waters_just_inside_is_covered() {
    assertThat(on(sheltered())).isEmpty();
    assertThat(on(sheltered().waves(0.3).wind(7.9).current(1.5).wash().offshore(500))).isEmpty();
    assertThat(on(sheltered().celsius(4).offshore(200))).isEmpty();
  }

  @Test
  void sail_and_tow_are_outside() {
    assertThat(driven(new Propulsion.Sail()))
        .containsExactly(
            "the boat is under sail, and sailing is outside what is worked out here, so nothing is"
                + " recommended");
    assertThat(driven(new Propulsion.Tow()))
        .containsExactly(
            "the boat tows or is towed faster than a walk, and that is outside what is worked out"
                + " here, so nothing is recommended");
  }

  // Waves to 0.3 m: Directive 2013/53/EU annex I, category D (READ).
  @Test
  void waves_higher_than_category_d_are_outside() {
    assertThat(on(sheltered().waves(0.31)))
        .containsExactly(
            "waves of 0.31 m are higher than 0.30 m (Directive 2013/53/EU annex I, design category"
                + " D: waves to 0.3 m (READ)), so nothing is recommended");
  }

  @Test
  void breaking_waves_and_weirs_are_outside() {
    assertThat(on(sheltered().breaking()))
        .containsExactly(
            "the waves break, and breaking waves are outside what is worked out here, so nothing"
                + " is recommended");
    assertThat(on(sheltered().weir()))
        .containsExactly(
            "there is a weir, sluice or fall the boat could be carried to, so nothing is"
                + " recommended");
  }

  @Test
  void wind_above_force_four_is_outside() {
    assertThat(on(sheltered().wind(8.0)))
        .containsExactly(
            "a wind of 8.0 m/s is force 5: more than force 4 (Irish sea scouting: not normally"
                + " afloat above force 4; upper edge of Beaufort force 4 (READ)), so nothing is"
                + " recommended");
  }

  @Test
  void a_current_nobody_rows_against_is_outside() {
    assertThat(on(sheltered().current(1.6)))
        .containsExactly(
            "a current of 1.60 m/s is stronger than 1.50 m/s (a current that one person can only"
                + " just row against (judgement)), so nothing is recommended");
  }

  @Test
  void far_out_is_outside_and_in_cold_water_sooner() {
    assertThat(on(sheltered().offshore(501)))
        .containsExactly(
            "501 m from the shore is farther than 500 m (as far as a swamped boat is seen from the"
                + " bank and a rowing boat is there within some ten minutes (judgement)), so"
                + " nothing is recommended");
    assertThat(on(sheltered().offshore(201).celsius(14)))
        .containsExactly(
            "201 m from the shore is farther than 200 m (in cold water help must be there within a"
                + " few minutes (judgement)), so nothing is recommended");
    assertThat(on(sheltered().offshore(201))).isEmpty();
  }

  @Test
  void figures_that_are_no_numbers_are_outside() {
    double nan = Double.NaN;
    assertThat(on(sheltered().waves(nan).wind(nan).current(nan).offshore(nan))).hasSize(4);
  }

  @Test
  void every_reason_is_told() {
    assertThat(on(sheltered().breaking().weir().wind(12))).hasSize(3);
  }

  @Test
  void more_petrol_than_one_portable_tank_is_outside() {
    assertThat(reasons(with(kit("petrol tank", 22.7)))).isEmpty();
    assertThat(reasons(with(kit("water can", 30), kit("petrol motor", 40)))).isEmpty();
    assertThat(reasons(with(kit("Fuel tank", 23))))
        .containsExactly(
            "there is more petrol aboard than one portable tank of at most 22 kg (Fuel tank), so"
                + " nothing is recommended");
    assertThat(reasons(with(kit("petrol tank", 8), kit("petrol can", 5)))).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"outrigger, port", "second hull"})
  void more_than_one_hull_is_outside_when_the_kit_speaks_of_it(String name) {
    assertThat(reasons(with(kit(name, 9))))
        .containsExactly(
            "\""
                + name
                + "\" speaks of more than one hull, and one is worked out here, so nothing is"
                + " recommended");
  }

  private static Kit kit(String name, double mass) {
    return new Kit(name, mass, Vector3.of(2, 0, 0.1), Optional.empty(), true, Optional.empty());
  }

  private static BoatModel with(Kit... kit) {
    var b = BoxBoat.of(4, 1.5, 0.6).boat();
    return BoatModel.of(
        new Boat(
            b.name(),
            b.water(),
            b.hull(),
            b.openings(),
            b.chambers(),
            b.places(),
            List.of(kit),
            b.aboard(),
            b.propulsion(),
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            b.measuredBy(),
            b.assumptions()),
        BoxBoat.TODAY);
  }
}
