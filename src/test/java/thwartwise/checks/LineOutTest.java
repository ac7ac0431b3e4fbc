package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.BEAM;
import static thwartwise.checks.OnPaper.DEPTH;
import static thwartwise.checks.OnPaper.GRAVITY;
import static thwartwise.checks.OnPaper.PLANE;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.fitted;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Opening;
import thwartwise.boat.Outfit;
import thwartwise.geometry.Vector3;
import thwartwise.hull.FloodPoint;
import thwartwise.loadcase.LineOut;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.LowestEdge;
import thwartwise.loadcase.StreamHead;
import thwartwise.rules.Limit;
import thwartwise.rules.Limit.Basis;
import thwartwise.rules.RuleSet;

/** Lines out from the ends of the box of {@link OnPaper}. */
class LineOutTest {
  private static final double STEEP = Math.tan(Math.toRadians(30));

  /** Snatch 2, current 1.5 m/s on B x d with Cd 1, wind 7.9 m/s on B x (D - d) and people. */
  private static double expected(double mass, int people) {
    double draft = mass / 1000 / PLANE;
    double water = 1000.0 / 2 * 1.0 * BEAM * draft * 1.5 * 1.5;
    double pressure = 1.225 / 2 * 7.9 * 7.9;
    double air = pressure * (1.28 * BEAM * (DEPTH - draft) + people * 1.3 * 0.5);
    return 2 * (water + air);
  }

  private static LineOut line(LoadedBoat trial, boolean astern) {
    return LineOut.of(RULES, trial, astern).get(0);
  }

  @Test
  void the_pull_of_current_and_wind_is_doubled_for_snatch() {
    LoadedBoat trial = trial(OnPaper.boat(300), person(95, 0.4));
    assertThat(line(trial, true).expected(trial)).isCloseTo(expected(395, 1), within(1e-6));
    assertThat(line(trial, false).expected(trial)).isCloseTo(expected(395, 1), within(1e-6));
    LoadedBoat nobody = trial(OnPaper.boat(300));
    assertThat(line(nobody, true).expected(nobody)).isCloseTo(expected(300, 0), within(1e-6));
  }

  // A straight line from 0.5 m up to the ground 2 m deep leads down by the arc sine of 2.5 over its
  // length: 4 m 38.7 degrees, 5 m 30, and a longer one is taken as steep as every line.
  @Test
  void a_short_anchor_line_leads_down_as_steeply_as_it_must() {
    LoadedBoat trial = trial(OnPaper.boat(300));
    Outfit two = Outfit.NOT_STATED.withAnchorDepth(2);
    assertThat(degrees(trial, two.withAnchorLine(4))).isCloseTo(38.6822, within(1e-4));
    assertThat(degrees(trial, two.withAnchorLine(5))).isCloseTo(30, within(1e-9));
    assertThat(degrees(trial, two.withAnchorLine(25))).isEqualTo(30, within(1e-12));
    assertThat(degrees(trial, two.withAnchorLine(2))).isEqualTo(75, within(1e-12));
    assertThat(degrees(trial, two)).isEqualTo(30, within(1e-12));
  }

  private static double degrees(LoadedBoat trial, Outfit outfit) {
    return Math.toDegrees(line(trial, false).downAngle(outfit));
  }

  @Test
  void a_short_anchor_line_costs_pull_at_the_bow() {
    Boat plain = OnPaper.boat(300).boat();
    Boat shortLine = plain.withOutfit(Outfit.NOT_STATED.withAnchorDepth(2).withAnchorLine(3));
    LoadedBoat longer = trial(plain);
    LoadedBoat steeper = trial(shortLine);
    assertThat(line(steeper, false).greatest(steeper, Double.NaN))
        .isLessThan(line(longer, false).greatest(longer, Double.NaN) - 50);
  }

  @Test
  void in_salt_water_a_boat_lies_higher_and_the_water_is_denser() {
    LoadedBoat trial = trial(OnPaper.boat(300).salt());
    double draft = 0.3 / 1.025 / PLANE;
    double water = 1025.0 / 2 * BEAM * draft * 2.25;
    double air = 1.225 / 2 * 7.9 * 7.9 * 1.28 * BEAM * (DEPTH - draft);
    assertThat(line(trial, true).expected(trial)).isCloseTo(2 * (water + air), within(1e-6));
  }

  /**
   * Pulled at the middle of one end, at the rail: tangent of the trim. The pull leads down, a
   * weight F tan 30 at the rail; its level part acts D - d/2 - L t/4 above the middle of what is
   * seen of the box under water, the corner at that end being the deepest: offset of G - (GM + BM
   * t²/2) t + F/W (D - d/2 - L t/4) = 0.
   */
  private static double trim(double mass, double hull, double pull) {
    double down = pull * STEEP / GRAVITY;
    double all = mass + down;
    double draft = all / 1000 / PLANE;
    double bm = 9 / (12 * draft);
    double height = (hull * 0.2 + (mass - hull) * 0.25 + down * DEPTH) / all;
    double gm = draft / 2 + bm - height;
    double push = pull / (all * GRAVITY);
    double tangent =
        OnPaper.root(
            t ->
                down * 1.5 / all
                    - (gm + bm * t * t / 2) * t
                    + push * (DEPTH - draft / 2 - 0.75 * t),
            0,
            0.5);
    assertThat(1.5 * tangent).as("the other end stays in on paper").isLessThan(draft);
    return tangent;
  }

  /** v²/2g of 1.5 m/s, references E4 (Bernoulli, DERIVED): 0.1147 m. */
  private static final double HEAD = 1.5 * 1.5 / (2 * GRAVITY);

  /** The rail at that end above the water that stands up there. */
  private static double left(double mass, double hull, double pull) {
    double tangent = trim(mass, hull, pull);
    double draft = (mass + pull * STEEP / GRAVITY) / 1000 / PLANE;
    return ((DEPTH - draft) - 1.5 * tangent) * Math.cos(Math.atan(tangent)) - HEAD;
  }

  @Test
  void at_anchor_by_the_stern_the_stern_comes_down_as_paper_says() {
    List<Finding> found =
        findings(new Anchoring(RULES, true), trial(OnPaper.boat(300), person(95, 0.4)));
    double pull = Math.ceil(expected(395, 1));
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly("anchoring by the stern", "anchoring by the stern, freeboard left");
    assertThat(found).allMatch(f -> f.role() == Role.FORBIDS_AN_ACT);
    assertThat(value(found.get(0))).isCloseTo(0, within(1e-6));
    assertThat(value(found.get(1))).isCloseTo(left(395, 300, pull), within(2e-5));
    assertThat(FindingText.note(found.get(1)))
        .isEqualTo("lowest at the rail, near aft; the current raises the water there by 0.12 m");
    // At rest the rail is 0.5 - d above the water and the middle of what is wet d/2 below.
    assertThat(FindingText.condition(found.get(1)))
        .isEqualTo(
            "on paper; 392 N of level pull (from 30 N as towed to 392 N against a blunt end, snatch"
                + " included) at the middle of the stern, 0.45 m above the middle of the hull"
                + " under water,"
                + " leading 30 degrees down");
  }

  @Test
  void at_anchor_by_the_bow_the_bow_comes_down_as_much() {
    List<Finding> found =
        findings(new Anchoring(RULES, false), trial(OnPaper.boat(300), person(95, 0.4)));
    assertThat(found).allMatch(f -> f.role() == Role.INFORMATION);
    assertThat(FindingText.check(found.get(1))).isEqualTo("anchoring by the bow, freeboard left");
    assertThat(FindingText.condition(found.get(1))).contains("at the stem,");
    assertThat(FindingText.note(found.get(1)))
        .isEqualTo("lowest at the rail, near fore; the current raises the water there by 0.12 m");
    assertThat(value(found.get(1)))
        .isCloseTo(left(395, 300, Math.ceil(expected(395, 1))), within(2e-5));
  }

  // References E4 (Bernoulli, DERIVED): 0.0510 m at 1.0, 0.1147 m at 1.5 m/s. At 0.5 m/s it prints
  // 0.0128, a quarter of 0.0510 rounded up; 0.25/19.6133 is 0.012746.
  @Test
  void a_stream_stands_up_by_its_head_against_the_end_that_meets_it() {
    assertThat(head(0.5)).isCloseTo(0.012746, within(5.1e-7));
    assertThat(head(1.0)).isCloseTo(0.0510, within(5.1e-5));
    assertThat(head(1.5)).isCloseTo(0.1147, within(5.1e-5));
  }

  private static double head(double speed) {
    Limit current = new Limit(speed, "m/s", Basis.JUDGEMENT, "a test");
    RuleSet slow = changed(Map.of("current", current));
    return StreamHead.of(slow, OnPaper.boat(300).model().form(), true).height();
  }

  // Only the tenth of the length next to the stern: a notch at 0.2 m from it is met, one at 0.4 m
  // is not.
  @Test
  void the_stream_stands_up_only_at_the_end_that_meets_it() {
    StreamHead astern = StreamHead.of(RULES, OnPaper.boat(300).model().form(), true);
    StreamHead ahead = StreamHead.of(RULES, OnPaper.boat(300).model().form(), false);
    assertThat(astern.meets(new FloodPoint("notch", Vector3.of(0.2, 0, 0.4)))).isTrue();
    assertThat(astern.meets(new FloodPoint("notch", Vector3.of(0.4, 0, 0.4)))).isFalse();
    assertThat(ahead.meets(new FloodPoint("notch", Vector3.of(2.8, 0, 0.4)))).isTrue();
    assertThat(ahead.meets(new FloodPoint("notch", Vector3.of(0.2, 0, 0.4)))).isFalse();
  }

  // A hundredth of the snatch leaves some 2 N, and the boat dragged 30 N in tow: the poorer counts.
  @Test
  void the_pull_is_never_less_than_what_such_boats_drag_in_tow() {
    RuleSet slack = changed(Map.of("snatch", new Limit(0.01, "ratio", Basis.JUDGEMENT, "a test")));
    LoadedBoat trial = trial(OnPaper.boat(300), person(95, 0.4));
    Finding left = findings(new Anchoring(slack, true), trial).get(1);
    assertThat(value(left)).isCloseTo(left(395, 300, 30), within(2e-5));
    assertThat(FindingText.condition(left)).startsWith("on paper; 30 N of level pull");
  }

  private static RuleSet changed(Map<String, Limit> others) {
    Map<String, Limit> limits = new HashMap<>(RULES.limits());
    limits.putAll(others);
    return new RuleSet(RULES.name(), RULES.edition(), RULES.appliesTo(), limits);
  }

  // Heavier lies deeper, is pulled harder, and goes under: the mass is found on paper.
  @Test
  void anchoring_by_the_stern_falls_short_just_past_the_mass_paper_finds() {
    double hull =
        OnPaper.root(m -> left(m + 95, m, Math.ceil(expected(m + 95, 1))) - 0.05, 300, 1400);
    assertThat(leftAstern(hull - 5)).isEqualTo(Outcome.BORDERLINE);
    assertThat(leftAstern(hull + 5)).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(leftAstern(300)).isEqualTo(Outcome.MEETS);
  }

  private static Outcome leftAstern(double hull) {
    return findings(new Anchoring(RULES, true), trial(OnPaper.boat(hull), person(95, 0.4)))
        .get(1)
        .outcome();
  }

  @Test
  void at_the_greatest_pull_the_stern_is_at_the_water_as_paper_says() {
    LoadedBoat trial = trial(OnPaper.boat(600), person(95, 0.4));
    Finding stern = findings(new GreatestPull(RULES), trial).get(0);
    double onPaper = OnPaper.root(f -> left(695, 600, f), 100, 4500);
    assertThat(FindingText.check(stern)).isEqualTo("greatest pull at the middle of the stern");
    assertThat(stern.role()).isEqualTo(Role.INFORMATION);
    assertThat(value(stern)).isBetween(onPaper - 10.1, onPaper + 0.1);
    assertThat(stern.limit()).isCloseTo(expected(695, 1), within(1e-6));
    assertThat(FindingText.note(stern))
        .isEqualTo(
            "the level pull that brings water in, against the end-on snatch of current and wind");
    assertThat(lowest(trial, value(stern))).isBetween(0.0, 0.005);
    assertThat(lowest(trial, 1.05 * value(stern))).isNegative();
  }

  private static double lowest(LoadedBoat trial, double pull) {
    LoadedBoat pulled = line(trial, true).pulling(trial, pull);
    StreamHead head = StreamHead.of(RULES, pulled.model().form(), true);
    return LowestEdge.of(pulled.atRest(), pulled, head).height().orElseThrow();
  }

  // What the snatch comes to against what the cleat takes: both grow together with the mass.
  @Test
  void the_greatest_pull_falls_short_where_the_snatch_is_harder() {
    double hull = OnPaper.root(m -> left(m + 95, m, expected(m + 95, 1)), 300, 1400);
    assertThat(greatest(hull - 20)).isNotEqualTo(Outcome.FALLS_SHORT);
    assertThat(greatest(hull + 20)).isEqualTo(Outcome.FALLS_SHORT);
  }

  private static Outcome greatest(double hull) {
    return findings(new GreatestPull(RULES), trial(OnPaper.boat(hull), person(95, 0.4)))
        .get(0)
        .outcome();
  }

  // 6 m by 2.5 m: no 5000 N bring its rail under.
  @Test
  void nothing_harder_than_the_rule_sets_greatest_pull_is_looked_at() {
    Finding found =
        findings(new GreatestPull(RULES), trial(BoxBoat.of(6, 2.5, 1).hull(2000, 0.3))).get(0);
    assertThat(value(found)).isEqualTo(5000);
    assertThat(FindingText.note(found)).endsWith("; no harder pull was tried");
  }

  @Test
  void every_cleat_named_has_a_line_of_its_own_to_the_end_it_is_nearer() {
    Boat boat =
        fitted(
            OnPaper.boat(1000),
            List.of(
                new Cleat("quarter cleat", Vector3.of(0.1, 0.5, 0.4)),
                new Cleat("ring", Vector3.of(2.9, 0, 0.3)),
                new Cleat("other quarter cleat", Vector3.of(0.1, -0.5, 0.4))),
            Optional.empty());
    assertThat(findings(new GreatestPull(RULES), trial(boat)))
        .extracting(FindingText::check)
        .containsExactly(
            "greatest pull at the quarter cleat",
            "greatest pull at the quarter cleat, out over the side",
            "greatest pull at the other quarter cleat",
            "greatest pull at the other quarter cleat, out over the side",
            "greatest pull at the ring",
            "greatest pull at the ring, out over the side");
  }

  @Test
  void cleats_at_one_end_leave_the_middle_of_the_rail_at_the_other() {
    Boat boat =
        fitted(
            OnPaper.boat(1000),
            List.of(new Cleat("ring", Vector3.of(2.9, 0, 0.3))),
            Optional.empty());
    LoadedBoat trial = trial(boat);
    assertThat(line(trial, true).cleat())
        .isEqualTo(new Cleat("middle of the stern", Vector3.of(0, 0, 0.5)));
    assertThat(line(trial, false).cleat().name()).isEqualTo("ring");
  }

  // A pull of 100 N leads 30 degrees down: 100 tan 30 as a weight at the cleat.
  @Test
  void what_of_a_line_leads_down_weighs_on_the_cleat() {
    LoadedBoat trial = trial(OnPaper.boat(1000));
    LoadedBoat pulled = line(trial, true).pulling(trial, 100);
    double down = 100 * STEEP / GRAVITY;
    assertThat(pulled.loading().mass()).isCloseTo(1000 + down, within(1e-9));
    assertThat(pulled.loading().centre().x()).isCloseTo(1.5 * 1000 / (1000 + down), within(1e-9));
    assertThat(FindingText.condition(pulled))
        .isEqualTo("on paper; a line out from the middle of the stern");
  }

  // From the keel the pull acts below the middle of what is wet, so only its steep part trims it.
  @Test
  void a_line_from_low_down_lets_the_stern_stand_higher_than_one_from_the_rail() {
    Boat low =
        fitted(
            OnPaper.boat(1000),
            List.of(new Cleat("eye in the keel", Vector3.of(0, 0, 0))),
            Optional.empty());
    Finding keel = findings(new GreatestPull(RULES), trial(low)).get(0);
    Finding rail = findings(new GreatestPull(RULES), trial(OnPaper.boat(1000))).get(0);
    assertThat(value(keel)).isGreaterThan(1.2 * value(rail));
  }

  // 1810 kg in a box of 1800 litres; and one with a hole under water from the start.
  @Test
  void a_boat_that_floods_without_any_pull_has_no_greatest_one() {
    Finding sunk = findings(new GreatestPull(RULES), trial(OnPaper.boat(1810))).get(0);
    assertThat(sunk.value()).isEmpty();
    assertThat(sunk.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(FindingText.note(sunk)).startsWith("it sinks");
    BoxBoat holed = OnPaper.boat(1000).opening(new Opening("hole", Vector3.of(1, 0, 0.1), 0, true));
    Finding wet = findings(new GreatestPull(RULES), trial(holed)).get(0);
    assertThat(wet.value()).isEmpty();
    assertThat(FindingText.note(wet))
        .isEqualTo("water comes in without any pull: lowest at the hole");
  }
}
