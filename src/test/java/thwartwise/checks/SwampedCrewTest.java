package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.GRAVITY;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.fitted;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.tanks;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.geometry.Span;
import thwartwise.loadcase.LoadedBoat;

/**
 * The crew in the water beside a swamped box that two tanks of 0.7 m hold up: a waterplane of 1.68
 * m², I = 1.4 x 1.2³/12.
 */
class SwampedCrewTest {
  private static final double PLANE = 1.68;
  private static final double INERTIA = 1.4 * 1.728 / 12;

  private static double heel(double hull, double weight) {
    double mass = hull + weight;
    double tangent =
        OnPaper.tangent(
            mass / 1000, PLANE, INERTIA, (hull * 0.2 + weight * 0.5) / mass, weight * 0.6 / mass);
    assertThat(0.6 * tangent).isLessThan(Math.min(mass / 1680, 0.5 - mass / 1680));
    return Math.atan(tangent);
  }

  // 53 N on the rail for each of the crew.
  @Test
  void everyone_holding_one_side_hangs_on_its_rail() {
    LoadedBoat two = trial(tanks(300), person(95, 0.4), person(60, 0.4));
    List<Finding> found = findings(new HoldingOnToOneSide(RULES), two);
    assertThat(found).hasSize(1);
    Finding holding = found.get(0);
    assertThat(FindingText.check(holding))
        .isEqualTo("swamped, everyone in the water holding one side");
    assertThat(holding.role()).isEqualTo(Role.INFORMATION);
    assertThat(value(holding)).isCloseTo(heel(300, 2 * 53 / GRAVITY), within(1e-6));
    assertThat(holding.limit()).isCloseTo(Math.toRadians(30), within(1e-12));
    assertThat(holding.outcome()).isEqualTo(Outcome.MEETS);
    assertThat(FindingText.condition(holding))
        .isEqualTo("on paper; everyone in the water, holding the rail on one side");
  }

  // One tank of 0.4 m along the middle: d 0.25, I = 3 x 0.4³/12 = 0.016, GM = 0.125 + 0.053 - 0.4.
  @Test
  void a_narrow_tank_lets_the_crew_pull_the_boat_over() {
    BoxBoat narrow =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(300, 0.4)
            .weightlessShell()
            .proven("middle tank", Span.ALL, new Span(-0.3, 0.3), Span.ALL);
    Finding found = findings(new HoldingOnToOneSide(RULES), trial(narrow, person(95, 0.4))).get(0);
    assertThat(found.outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  // 395 kg on the tanks' 1.68 m² and on legs of 30.4 litres over 0.23 m, 0.132 m², from the floor
  // at
  // 0.02 m: 1680 d + 132 (d - 0.02) = 395. Inside stand 1.92 d m³ less the legs; a bailer of two
  // litres, taken 0.6 full twenty times a minute, where none is named.
  @Test
  void a_swamped_box_is_bailed_in_the_minutes_paper_says() {
    List<Finding> found = findings(new Bailing(RULES), trial(tanks(300), person(95, 0.4)));
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "swamped, lowest edge above the water for bailing", "swamped, bailing it out");
    assertThat(found).allMatch(f -> f.role() == Role.INFORMATION);
    double legs = 0.32 * 95 / 0.23;
    double draft = (395 + 0.02 * legs) / (1680 + legs);
    assertThat(value(found.get(0))).isCloseTo(0.5 - draft, within(1e-6));
    assertThat(found.get(0).limit()).isEqualTo(0.03);
    double litres = 1920 * draft - legs * (draft - 0.02);
    assertThat(value(found.get(1))).isCloseTo(60 * litres / 24, within(1e-2));
    assertThat(found.get(1).limit()).isEqualTo(1200);
    assertThat(FindingText.condition(found.get(1)))
        .isEqualTo("on paper; crew back in it to bail, the others in the water");
    assertThat(FindingText.note(found.get(1)))
        .isEqualTo(
            "395 litres with a bailer of 2.0 litres (none was named), 20 strokes a minute each 60 %"
                + " full");
  }

  // A tank 1 m long and 0.9 m broad amidships carries the bailer on the seat, GM = 0.31 + 0.11 -
  // 0.22
  // m; with 95 kg at the rail, at a side or an end, its G is too high and too far out.
  @Test
  void where_nobody_gets_back_in_nobody_bails() {
    BoxBoat middle =
        OnPaper.boat(100)
            .weightlessShell()
            .proven("middle tank", new Span(1, 2), new Span(-0.45, 0.45), Span.ALL);
    LoadedBoat trial = trial(middle, person(95, 0.4));
    assertThat(new GettingBackIn(RULES).readings(trial)).noneMatch(CheckReading::met);
    List<Finding> found = findings(new Bailing(RULES), trial);
    assertThat(value(found.get(0))).isGreaterThan(0.2);
    assertThat(found.get(1).value()).isEmpty();
    assertThat(found.get(1).outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(FindingText.note(found.get(1)))
        .isEqualTo("nobody gets back in to bail, over the side, the stern or the bow");
  }

  // The whole weight at half the beam and not half of it.
  @Test
  void from_the_edge_of_the_bottom_with_a_line_one_person_gives_twice_as_much() {
    BoxBoat square =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(375, 0.26)
            .weightlessShell()
            .proven("square tank", Span.ALL, new Span(-0.25, 0.25), Span.ALL);
    List<Finding> found = findings(new TurningBack(RULES), trial(square, person(95, 0.4)));
    assertThat(FindingText.check(found.get(1)))
        .isEqualTo("swamped and turned over, turning it back with a line");
    assertThat(found.get(1).limit()).isCloseTo(95 * GRAVITY * 0.6, within(1e-9));
    assertThat(found.get(1).value()).isEqualTo(found.get(0).value());
    assertThat(FindingText.note(found.get(1)))
        .startsWith(
            "against one person of 95 kg standing on the edge of the upturned bottom and leaning"
                + " out on a line");
  }

  @Test
  void a_bailer_twice_as_large_halves_the_minutes() {
    Boat boat = fitted(tanks(300), List.of(), Optional.of(4.0));
    List<Finding> found = findings(new Bailing(RULES), trial(boat));
    assertThat(value(found.get(1))).isCloseTo(60 * 1920 * 300.0 / 1680 / 48, within(1e-2));
    assertThat(FindingText.note(found.get(1))).contains("a bailer of 4.0 litres, 20 strokes");
  }

  // Twenty minutes at 24 litres: 480 litres, which is 480/1920 of draft or 420 kg.
  @Test
  void bailing_falls_short_just_past_the_mass_paper_finds() {
    assertThat(bailing(419).get(1).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(bailing(421).get(1).outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(bailing(350).get(1).outcome()).isEqualTo(Outcome.MEETS);
  }

  // 0.03 m of rail: 0.47 x 1680 = 789.6 kg.
  @Test
  void the_rail_for_bailing_falls_short_just_past_the_mass_paper_finds() {
    assertThat(bailing(789).get(0).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(bailing(791).get(0).outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  // 820 kg leave 12 mm of rail as measured and none once the allowance is taken off; 850 kg sink.
  @Test
  void with_the_rail_under_it_cannot_be_bailed_and_says_so() {
    BoxBoat deep = tanks(820);
    assertThat(findings(new Bailing(RULES), trial(deep)))
        .hasSize(2)
        .allMatch(f -> f.outcome() == Outcome.FALLS_SHORT);
    BoxBoat holed =
        tanks(300)
            .opening(
                new thwartwise.boat.Opening(
                    "notch", thwartwise.geometry.Vector3.of(0, 0, 0.1), 0.2, true));
    List<Finding> under = findings(new Bailing(RULES), trial(holed));
    assertThat(under.get(1).value()).isEmpty();
    assertThat(under.get(1).outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(FindingText.note(under.get(1)))
        .isEqualTo("an edge is under: the sea comes in as fast as it is bailed");
    List<Finding> sunk = findings(new Bailing(RULES), trial(tanks(850)));
    assertThat(sunk).hasSize(2).allMatch(f -> FindingText.note(f).startsWith("it sinks"));
  }

  private static List<Finding> bailing(double mass) {
    return findings(new Bailing(RULES), trial(tanks(mass)));
  }

  // 95 kg on the rail: at the side by the two tanks' waterplane.
  @Test
  void getting_back_in_over_the_side_heels_the_swamped_box_as_paper_says() {
    List<Finding> found = findings(new GettingBackIn(RULES), trial(tanks(300), person(95, 0.4)));
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "swamped, getting back in over the side",
            "swamped, getting back in over the stern",
            "swamped, getting back in over the bow");
    assertThat(found).allMatch(f -> f.role() == Role.INFORMATION);
    assertThat(value(found.get(0))).isCloseTo(heel(300, 95), within(1e-6));
    assertThat(found.get(0).limit()).isCloseTo(Math.toRadians(30), within(1e-12));
    // Over the ends it only trims.
    assertThat(value(found.get(1))).isBetween(0.0, Math.toRadians(10));
    assertThat(value(found.get(2))).isCloseTo(value(found.get(1)), within(1e-6));
    assertThat(FindingText.condition(found.get(1)))
        .isEqualTo("on paper; the others in the water; somebody climbing in over the stern");
  }

  // With a tank at the bow only, the weight at the stern stands the boat on its stern.
  @Test
  void a_boat_that_stands_on_end_when_somebody_gets_in_does_not_meet_anything() {
    BoxBoat bowTank = OnPaper.boat(100).weightlessShell().proven("bow tank", new Span(2.2, 3));
    Finding stern = findings(new GettingBackIn(RULES), trial(bowTank)).get(1);
    assertThat(FindingText.note(stern)).isEqualTo("it stands on its stern");
    assertThat(stern.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(value(stern)).isGreaterThan(Math.toRadians(45));
  }

  // A square tank of side a through the whole boat, half under: about its middle it rights with
  // a/12 (tan² - 1) sin up to 45 degrees and repeats every right angle; G a little above, at 0.26,
  // adds -0.01 sin. The most against it over steps of two degrees, times 375 g, against 95 kg at
  // half the beam.
  @Test
  void turning_back_takes_the_moment_paper_says() {
    double most = 0;
    for (int degree = 0; degree <= 180; degree += 2) {
      double near = Math.toRadians(degree - 90 * Math.round(degree / 90.0));
      double tan = Math.tan(near);
      double arm = 0.5 / 12 * (tan * tan - 1) * Math.sin(near);
      most = Math.max(most, -arm + 0.01 * Math.sin(Math.toRadians(degree)));
    }
    Finding found = turned(0.26);
    assertThat(FindingText.check(found)).isEqualTo("swamped and turned over, turning it back");
    assertThat(found.role()).isEqualTo(Role.INFORMATION);
    assertThat(value(found)).isCloseTo(375 * GRAVITY * most, within(0.05));
    assertThat(found.limit()).isCloseTo(95 * GRAVITY * 0.6 * 0.5, within(1e-9));
    assertThat(found.source()).startsWith("of one person's weight at half the beam");
    assertThat(FindingText.condition(found))
        .isEqualTo("on paper; everyone in the water beside it, nobody under it");
    assertThat(FindingText.note(found))
        .isEqualTo(
            "against one person of 95 kg at the rail, half in the water; once up it does not stay"
                + " up; air caught under it is not counted");
  }

  @Test
  void a_boat_with_its_weight_low_rolls_back_by_itself() {
    Finding found = turned(0.15);
    assertThat(value(found)).isZero();
    assertThat(found.outcome()).isEqualTo(Outcome.MEETS);
    assertThat(FindingText.note(found)).isEqualTo("it does not stay upside down");
  }

  // G 0.25 m above the tank's middle: about W x 0.25 more.
  @Test
  void a_boat_with_its_weight_high_is_too_much_for_one_adult() {
    Finding found = turned(0.5);
    assertThat(value(found)).isGreaterThan(0.25 * 375 * GRAVITY);
    assertThat(found.outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  @Test
  void a_boat_that_sinks_is_not_turned_back() {
    Finding found = findings(new TurningBack(RULES), trial(tanks(900))).get(0);
    assertThat(found.value()).isEmpty();
    assertThat(found.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(FindingText.note(found)).isEqualTo("it does not float");
  }

  private static Finding turned(double heightOfG) {
    BoxBoat square =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(375, heightOfG)
            .weightlessShell()
            .proven("square tank", Span.ALL, new Span(-0.25, 0.25), Span.ALL);
    return findings(new TurningBack(RULES), trial(square, person(95, 0.4))).get(0);
  }
}
