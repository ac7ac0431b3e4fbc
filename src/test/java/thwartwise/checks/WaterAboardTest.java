package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.GRAVITY;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Opening;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * Bilge, rain and drain on the box of {@link OnPaper} with a shell that takes no room and G at 0.1
 * m. With tanks that leave a well of 0.4 m amidships, 240 litres, loose water cannot run to one
 * end: it sinks on an even keel until the rail is under, when hull and water fill 1.8 m³.
 */
class WaterAboardTest {
  private static final double FOUND = 1.1e-4; // litres are looked for as near as a tenth

  private static BoxBoat low(double mass) {
    return BoxBoat.of(3, 1.2, 0.5).hull(mass, 0.1).weightlessShell();
  }

  private static BoxBoat well(double mass) {
    return low(mass).chamber(tank("stern tank", 0, 1.3)).chamber(tank("bow tank", 1.7, 3));
  }

  private static Chamber tank(String name, double from, double to) {
    Box box = new Box(new Span(from, to), Span.ALL, Span.ALL);
    Chamber tank = BoxBoat.proven(name, box, Optional.empty());
    return new Chamber(name, box, tank.filling(), Optional.empty(), false, true);
  }

  private static List<Finding> bilge(BoxBoat boat) {
    return findings(new WaterInTheBilge(RULES), trial(boat));
  }

  // A notch 0.4 m up goes under when hull and water fill 3.6 x 0.4 m³.
  @Test
  void loose_water_brings_the_first_edge_under_as_paper_says() {
    Opening notch = new Opening("notch", Vector3.of(0, 0, 0.4), 0.2, true);
    List<Finding> found = bilge(well(1250).opening(notch));
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly("loose water, first edge under", "loose water, no longer comes back");
    assertThat(found).allMatch(f -> f.role() == Role.INFORMATION && f.limit() == 0.04);
    assertThat(value(found.get(0))).isCloseTo(0.19, within(FOUND));
    assertThat(FindingText.note(found.get(0))).isEqualTo("at the notch");
    assertThat(FindingText.condition(found.get(0))).isEqualTo("on paper");
    assertThat(value(found.get(1))).isEqualTo(value(found.get(0)));
    assertThat(FindingText.note(found.get(1)))
        .isEqualTo("it comes back while no edge is under water");
  }

  // 40 litres: 1.8 - m/1000 >= 0.04 as measured; 1.728 - 1.05 m/1000 >= 0.04 with the allowance.
  @Test
  void loose_water_meets_is_borderline_and_falls_short_where_paper_says() {
    assertThat(bilge(well(1605)).get(0).outcome()).isEqualTo(Outcome.MEETS);
    assertThat(bilge(well(1611)).get(0).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(bilge(well(1759)).get(0).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(bilge(well(1761)).get(0).outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  // 240 litres in 300 kg of boat do not bring the rail near.
  @Test
  void a_small_well_may_be_full_to_the_rail() {
    List<Finding> found = bilge(well(300));
    assertThat(value(found.get(0))).isCloseTo(0.24, within(1e-5));
    assertThat(FindingText.note(found.get(0))).isEqualTo("not even when it is full");
    assertThat(value(found.get(1))).isEqualTo(value(found.get(0)));
  }

  /**
   * A dam of 0.2 m amidships, 0.3 m high: water in the aft bay, 1.4 m of it, trims the boat by t,
   * runs aft itself, and brings the stern under when D - d = L t/2. About the middle, with V all
   * and w the bay's water: V₀ t zG + w (0.8 + t h/2) + i (t + t³/2) = I (t + t³/2) + V t d/2.
   */
  private static double bayOnPaper(double hull) {
    return OnPaper.root(w -> bayMoment(hull, w), 0.05, 0.45);
  }

  private static double bayMoment(double hull, double water) {
    double volume = hull / 1000 + water;
    double draft = volume / 3.6;
    double t = (0.5 - draft) / 1.5;
    double turn = t + t * t * t / 2;
    double depth = water / 1.68;
    double bay = 1.2 * Math.pow(1.4, 3) / 12;
    double boat = 1.2 * 27 / 12;
    return hull / 1000 * t * 0.1
        + water * (0.8 + t * depth / 2)
        + bay * turn
        - boat * turn
        - volume * t * draft / 2;
  }

  private static Chamber dam(boolean limberHole) {
    return new Chamber(
        "thwart box",
        new Box(new Span(1.4, 1.6), Span.ALL, new Span(0, 0.3)),
        new Filling.Air(Seal.CLAIMED, Optional.empty()),
        Optional.empty(),
        false,
        limberHole);
  }

  @Test
  void a_thwart_that_dams_the_bilge_lets_a_bay_trim_the_stern_under_first() {
    List<Finding> found = bilge(low(1000).chamber(dam(false)));
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "loose water, first edge under",
            "loose water, no longer comes back",
            "loose water in the bay aft of the thwart box, first edge under",
            "loose water in the bay aft of the thwart box, no longer comes back",
            "loose water in the bay forward of the thwart box, first edge under",
            "loose water in the bay forward of the thwart box, no longer comes back");
    assertThat(value(found.get(2))).isCloseTo(bayOnPaper(1000), within(FOUND));
    assertThat(FindingText.note(found.get(2))).isEqualTo("at the rail, near aft");
    assertThat(FindingText.condition(found.get(2))).isEqualTo("on paper");
  }

  @Test
  void a_limber_hole_leaves_the_boat_one_bay() {
    assertThat(bilge(low(1000).chamber(dam(true)))).hasSize(2);
  }

  // 0.15 m³ over the plan of the boat, 3.6 m², of which a deck of one metre covers a third.
  @Test
  void rain_falls_into_what_is_not_decked() {
    Finding open = rain(well(1650));
    assertThat(FindingText.check(open)).isEqualTo("rain at the mooring");
    assertThat(open.role()).isEqualTo(Role.INFORMATION);
    assertThat(value(open)).isCloseTo(0.15 / 3.6, within(1e-4));
    assertThat(open.limit()).isEqualTo(0.05);
    assertThat(FindingText.condition(open))
        .isEqualTo("on paper; left at its mooring, nobody in it");
    assertThat(FindingText.note(open))
        .isEqualTo(
            "150 litres on 3.6 square metres until an edge is under water or it no longer comes"
                + " back");
    Finding decked = rain(well(1650).decked(2, 3));
    assertThat(value(decked)).isCloseTo(0.15 / 2.4, within(1e-4));
    assertThat(FindingText.note(decked)).contains(" on 2.4 square metres");
  }

  // 50 mm on 3.6 m² are 180 litres: met up to 1620 kg as measured.
  @Test
  void a_wet_day_and_night_floods_a_boat_just_heavier_than_paper_allows() {
    assertThat(rain(well(1619)).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(rain(well(1621)).outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  @Test
  void nobody_sits_in_the_boat_at_its_mooring() {
    Finding crewed =
        findings(new RainAtTheMooring(RULES), trial(well(1650), person(95, 0.4))).get(0);
    assertThat(value(crewed)).isEqualTo(value(rain(well(1650))));
  }

  private static Finding rain(BoxBoat boat) {
    List<Finding> found = findings(new RainAtTheMooring(RULES), trial(boat));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static Opening drain(double height, double diameter) {
    return new Opening(
        "drain",
        Vector3.of(1.5, 0, height),
        0,
        true,
        Optional.of("bung"),
        Optional.empty(),
        Optional.of(diameter));
  }

  private static Finding drained(BoxBoat boat) {
    List<Finding> found = findings(new DrainOpen(RULES), trial(boat));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  // Without chambers the sea stands m/(rho A) above the water inside however much is in: a
  // constant rate, 0.6 a sqrt(2 g m/(rho A)), until the litres of the bilge check are in. Only in
  // the last of them does it trim; a drain amidships lies as deep then.
  private static double secondsOnPaper(double diameter, double volume) {
    double area = Math.PI * diameter * diameter / 4;
    return volume / (0.6 * area * Math.sqrt(2 * GRAVITY * 1.0 / 3.6));
  }

  @Test
  void a_box_fills_through_its_drain_at_a_constant_rate() {
    Finding found = drained(low(1000).opening(drain(0, 0.022)));
    double seconds = secondsOnPaper(0.022, 0.04);
    assertThat(FindingText.check(found)).isEqualTo("drain without its bung");
    assertThat(found.role()).isEqualTo(Role.INFORMATION);
    assertThat(value(found)).isCloseTo(seconds, within(0.01 * seconds));
    assertThat(found.limit()).isEqualTo(600);
    assertThat(FindingText.condition(found)).isEqualTo("on paper; open");
    // 60 x 0.6 a sqrt(2 g/3.6) = 31.9 litres a minute.
    assertThat(FindingText.note(found))
        .matches("32 litres a minute at first; then 40 litres are in, and more comes");
  }

  // Ten minutes: the diameter at which paper has it full by then, a little less and a little more.
  @Test
  void a_drain_wider_than_paper_allows_falls_short() {
    double diameter = OnPaper.root(d -> secondsOnPaper(d, 0.04) - 600, 0.001, 0.1);
    assertThat(drained(low(1000).opening(drain(0, 0.98 * diameter))).outcome())
        .isEqualTo(Outcome.MEETS);
    assertThat(drained(low(1000).opening(drain(0, 1.02 * diameter))).outcome())
        .isEqualTo(Outcome.FALLS_SHORT);
  }

  @Test
  void a_drain_above_the_water_lets_nothing_in() {
    Finding found = drained(low(1000).opening(drain(0.3, 0.022)));
    assertThat(value(found)).isEqualTo(24 * 3600);
    assertThat(FindingText.note(found))
        .isEqualTo("it is above the water, so nothing runs in while the boat lies still");
    assertThat(found.outcome()).isEqualTo(Outcome.MEETS);
  }

  // The draft is 0.2778 m; with the allowance 5 % more, so 0.285 m is above the water only as
  // measured.
  @Test
  void a_drain_just_above_the_water_is_not_trusted() {
    assertThat(drained(low(1000).opening(drain(0.285, 0.08))).outcome())
        .isNotEqualTo(Outcome.NOT_ASSESSED);
    assertThat(value(drained(low(1000).opening(drain(0.277, 0.022))))).isLessThan(24 * 3600);
  }

  // End tanks of 0.7 m hold 300 kg up with the hold level with the sea: w (1/1.92 - 1/3.6) =
  // 0.3/3.6, w = 0.343; found to a thirty-second of the hold's 0.96 m³.
  @Test
  void a_boat_its_tanks_hold_up_fills_until_it_is_level_with_the_sea() {
    Finding found = drained(OnPaper.tanks(300).opening(drain(0, 0.022)));
    assertThat(FindingText.note(found))
        .matches("\\d+ litres a minute at first; then 40 litres are in, and more comes");
  }

  @Test
  void a_boat_whose_rail_is_under_already_has_no_time_left() {
    Finding found = drained(low(1810).opening(drain(0, 0.022)));
    assertThat(found.value()).isEmpty();
    assertThat(found.outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  @Test
  void a_hatch_into_a_chamber_and_a_hole_nothing_shuts_are_no_drains() {
    Opening hatch =
        new Opening(
            "hatch",
            Vector3.of(2.5, 0, 0.3),
            0.3,
            true,
            Optional.of("lid"),
            Optional.of("bow tank"),
            Optional.empty());
    Opening notch = new Opening("notch", Vector3.of(0, 0, 0.45), 0.3, true);
    BoxBoat boat = OnPaper.tanks(300).opening(hatch).opening(notch);
    assertThat(findings(new DrainOpen(RULES), trial(boat))).isEmpty();
  }

  // A square-cut drain is named by its width: a hole as wide as a round one.
  @Test
  void a_drain_without_a_diameter_is_taken_as_round_and_as_wide_as_it_is() {
    Opening wide =
        new Opening(
            "drain",
            Vector3.of(1.5, 0, 0),
            0.022,
            true,
            Optional.of("bung"),
            Optional.empty(),
            Optional.empty());
    assertThat(value(drained(low(1000).opening(wide))))
        .isCloseTo(value(drained(low(1000).opening(drain(0, 0.022)))), within(1e-9));
  }
}
