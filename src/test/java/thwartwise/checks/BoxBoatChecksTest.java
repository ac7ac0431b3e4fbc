package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Place;
import thwartwise.files.report.OldNames;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * Every check of the cautious set on boats like a shoe box, worked on paper: 3 m by 1.2 m, so 3.6
 * kg of water a millimetre; one person amidships.
 */
class BoxBoatChecksTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final Allowance ALLOWANCE = Allowance.withEnoughStations(RULES);
  private static final double WATERPLANE = 3 * 1.2 * 1000;

  private static BoxBoat boat(double mass) {
    return BoxBoat.of(3, 1.2, 0.5).hull(mass, 0.2);
  }

  private static Body person(double mass, double reach) {
    return Body.seated("crew", mass, new Place("thwart", 1.5, 0.25, reach, 1), 0, 0.02);
  }

  private static List<Finding> findings(Check check, BoatModel model, Body... people) {
    return Findings.of(
        check, LoadedBoat.of(model, List.of(people), OldNames.loadCase("on paper")), ALLOWANCE);
  }

  // Freeboard 0.5 - m/3600: needs 0.20 as measured, and 0.20 + 0.02 at 1.05 m: m <= 1080 and
  // m <= 0.28 x 3600/1.05 = 960.
  @Test
  void freeboard_at_rest_meets_is_borderline_and_falls_short_where_paper_says() {
    assertThat(freeboard(955).outcome()).isEqualTo(Outcome.MEETS);
    assertThat(freeboard(965).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(freeboard(1075).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(freeboard(1085).outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(freeboard(955).value().orElseThrow())
        .isCloseTo(0.5 - 955 / WATERPLANE, within(1e-9));
    assertThat(freeboard(955).limit()).isEqualTo(0.20);
  }

  private static Finding freeboard(double mass) {
    List<Finding> found = findings(new FreeboardAtRest(RULES), boat(mass).model());
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  // A canoe, under 1.1 m and over four beams long, needs 0.15 m.
  @Test
  void a_canoe_may_lie_deeper() {
    BoatModel canoe = BoxBoat.of(4.5, 0.9, 0.35).hull(30, 0.15).model();
    assertThat(findings(new FreeboardAtRest(RULES), canoe).get(0).limit()).isEqualTo(0.15);
  }

  // Wall-sided paper: (GM + BM tan^2/2) tan = offset of G, while bottom and rail stay where they
  // are; freeboard left = (0.5 - d) cos - 0.6 sin.
  @Test
  void three_fifths_to_one_side_heels_as_paper_says() {
    double person = 95;
    double reach = 0.4;
    BoatModel model = boat(300).model();
    List<Finding> found = findings(new ThreeFifthsToOneSide(RULES), model, person(person, reach));
    assertThat(found).hasSize(2);
    double heel = paperHeel(300, person, 0.6 * reach, 0.25);
    assertThat(found.get(0).value().orElseThrow()).isCloseTo(heel, within(1e-8));
    assertThat(found.get(0).limit())
        .isCloseTo(Math.toRadians(10 + Math.pow(21, 3) / 600), within(1e-12));
    assertThat(found.get(1).value().orElseThrow())
        .isCloseTo(paperFreeboard(395, heel), within(1e-8));
    assertThat(found).allMatch(f -> f.outcome() == Outcome.MEETS);
  }

  private static double paperHeel(double hull, double person, double out, double height) {
    double mass = hull + person;
    double draft = mass / WATERPLANE;
    double bm = 1.44 / (12 * draft);
    double gm = draft / 2 + bm - (hull * 0.2 + person * height) / mass;
    double offset = person * out / mass;
    double tan = new BrentSolver(1e-14).solve(200, t -> (gm + bm * t * t / 2) * t - offset, 0, 1);
    assertThat(0.6 * tan).as("paper holds only while the bottom is under").isLessThan(draft);
    return Math.atan(tan);
  }

  private static double paperFreeboard(double mass, double heel) {
    return (0.5 - mass / WATERPLANE) * Math.cos(heel) - 0.6 * Math.sin(heel);
  }

  // Freeboard left against 0.05: find on paper the mass of a hull for which it is just met.
  @Test
  void freeboard_left_falls_short_just_past_the_mass_paper_finds() {
    double hull =
        new BrentSolver(1e-9)
            .solve(
                200, m -> paperFreeboard(m + 95, paperHeel(m, 95, 0.24, 0.25)) - 0.05, 600, 1500);
    assertThat(left(hull - 1)).isNotEqualTo(Outcome.FALLS_SHORT);
    assertThat(left(hull + 1)).isEqualTo(Outcome.FALLS_SHORT);
    // And borderline below it: the allowance of 5 % and 20 mm is not met one kilogram before.
    assertThat(left(hull - 1)).isEqualTo(Outcome.BORDERLINE);
  }

  private static Outcome left(double hull) {
    return findings(new ThreeFifthsToOneSide(RULES), boat(hull).model(), person(95, 0.4))
        .get(1)
        .outcome();
  }

  static Stream<Reference> heels() {
    return Reference.of("offset-heel");
  }

  @ParameterizedTest
  @MethodSource("heels")
  void the_greatest_heel_follows_the_worksheet(Reference r) {
    BoatModel model = BoxBoat.of(r.in("L"), 2.5, 1).hull(2000, 0.3).model();
    Finding heel = findings(new ThreeFifthsToOneSide(RULES), model, person(80, 0.5)).get(0);
    assertThat(Math.toDegrees(heel.limit())).isCloseTo(r.wanted("deg"), within(r.near("deg")));
  }

  @Test
  void hard_against_one_side_is_the_whole_way_out() {
    Finding heel =
        findings(new HardAgainstOneSide(RULES), boat(300).model(), person(95, 0.4)).get(0);
    assertThat(FindingText.check(heel)).isEqualTo("one person hard against one side");
    assertThat(heel.role()).isEqualTo(Role.FORBIDS_AN_ACT);
    assertThat(heel.value().orElseThrow()).isCloseTo(paperHeel(300, 95, 0.4, 0.25), within(1e-8));
  }

  // Two people, one each side of the middle: everyone to one side doubles the offset.
  @Test
  void everyone_hard_against_one_side_counts_everyone() {
    Body port = person(60, 0.4).at(0.2);
    Body starboard = person(60, 0.4).at(-0.2);
    List<Finding> found =
        findings(new HardAgainstOneSide(RULES), boat(500).model(), port, starboard);
    assertThat(FindingText.check(found.get(0))).isEqualTo("everyone hard against one side");
    assertThat(found.get(0).value().orElseThrow())
        .isCloseTo(paperHeel(500, 120, 0.4, 0.25), within(1e-8));
    // One alone, at worst the far one, crosses to join the other: 60 x 0.4 + 60 x 0.2 of 120 kg.
    assertThat(found.get(2).value().orElseThrow())
        .isCloseTo(paperHeel(500, 120, 0.3, 0.25), within(1e-8));
  }

  // Standing a little off the middle line (0.10 m, judgement): G of 95 kg at 1.02.
  @Test
  void one_standing_keeps_a_stiff_box_upright_and_upsets_a_tender_one() {
    List<Finding> stiff =
        findings(new OnePersonStanding(RULES), boat(300).model(), person(95, 0.4));
    assertThat(stiff.get(0).value().orElseThrow())
        .isCloseTo(paperHeel(300, 95, 0.1, 1.02), within(1e-8));
    assertThat(stiff).allMatch(f -> f.role() == Role.FORBIDS_AN_ACT);
    // Tender: 0.7 m beam, draft 115/2100 = 0.055, BM 0.75, KB 0.03, KG (20*.2+95*1.02)/115 = 0.877.
    BoatModel tender = BoxBoat.of(3, 0.7, 0.5).hull(20, 0.2).model();
    List<Finding> upset = findings(new OnePersonStanding(RULES), tender, person(95, 0.25));
    assertThat(upset.get(0).outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  // Swamped box, end tanks of 0.7 m, no shell volume. Lift 2 x 0.7 x 1.2 x 0.5 = 840 l, and 95 l of
  // body; weight m + 95. Spare 840 - m as measured against 20; with the allowance
  // 756 + 99.75 - 1.05 (m + 95) = 756 - 1.05 m.
  @Test
  void lift_to_spare_meets_is_borderline_and_falls_short_where_paper_says() {
    assertThat(lift(700).value().orElseThrow()).isCloseTo(140, within(0.01));
    assertThat(lift(700).outcome()).isEqualTo(Outcome.MEETS);
    assertThat(lift(702).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(lift(819).outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(lift(821).outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(lift(700).limit()).isEqualTo(20);
  }

  private static BoxBoat tanks(double mass) {
    return boat(mass)
        .weightlessShell()
        .proven("stern tank", new Span(0, 0.7))
        .proven("bow tank", new Span(2.3, 3));
  }

  private static Finding lift(double mass) {
    return findings(new SwampedLift(RULES), tanks(mass).model(), person(95, 0.4)).get(0);
  }

  // One tank lost: 420 l left.
  @Test
  void with_one_chamber_lost_half_the_tanks_lift() {
    Finding lost = findings(new OneChamberLost(RULES), tanks(300).model(), person(95, 0.4)).get(0);
    assertThat(lost.value().orElseThrow()).isCloseTo(120, within(0.01));
    assertThat(lost.outcome()).isEqualTo(Outcome.MEETS);
    Finding sunk = findings(new OneChamberLost(RULES), tanks(410).model(), person(95, 0.4)).get(0);
    assertThat(sunk.value().orElseThrow()).isCloseTo(10, within(0.01));
    assertThat(sunk.outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  // Losing the larger tank costs more; a boat with none that counts has nothing to lose.
  @Test
  void the_chamber_whose_loss_costs_most_is_named() {
    BoxBoat uneven =
        boat(100)
            .weightlessShell()
            .proven("small", new Span(0, 0.4))
            .proven("large", new Span(2, 3));
    Finding lost = findings(new OneChamberLost(RULES), uneven.model()).get(0);
    assertThat(FindingText.check(lost)).isEqualTo("swamped, large lost");
    assertThat(lost.value().orElseThrow()).isCloseTo(240 - 100, within(0.01));
    BoatModel none = boat(100).claimed("tank", new Span(0, 1)).model();
    assertThat(findings(new OneChamberLost(RULES), none)).isEmpty();
  }

  // Swamped level, nobody aboard, 300 kg on tanks of 1.4 x 1.2: draft 300/1680, both ends out by
  // 0.5 - 0.1786; G at 0.2: I = 1.4 x 1.2^3/12, BM 0.672, stiff.
  @Test
  void a_box_with_even_tanks_lies_level_when_swamped() {
    List<Finding> found = findings(new SwampedLevel(RULES), tanks(300).model());
    assertThat(found).hasSize(3).allMatch(f -> f.outcome() == Outcome.MEETS);
    double out = 0.5 - 300.0 / 1680;
    assertThat(found.get(0).value().orElseThrow()).isCloseTo(0, within(1e-6));
    assertThat(found.get(1).value().orElseThrow()).isCloseTo(out, within(1e-6));
    assertThat(found.get(2).value().orElseThrow()).isCloseTo(-out, within(1e-6));
  }

  // The same with G so far aft that paper trims it: moments about the middle of the two tanks,
  // I_L = 2 x 1.2 x (0.7^3/12 + 0.7 x 1.15^2), GM_L from it; 30 kg m of 300 kg.
  @Test
  void a_box_with_weight_aft_lies_stern_down_when_swamped() {
    BoxBoat boat =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(300, Vector3.of(1.4, 0, 0.2))
            .weightlessShell()
            .proven("stern tank", new Span(0, 0.7))
            .proven("bow tank", new Span(2.3, 3));
    List<Finding> found = findings(new SwampedLevel(RULES), boat.model());
    double inertia = 2 * 1.2 * (Math.pow(0.7, 3) / 12 + 0.7 * 1.15 * 1.15);
    double draft = 300.0 / 1680;
    double gm = draft / 2 + inertia / 0.3 - 0.2;
    double bm = inertia / 0.3;
    double tan = new BrentSolver(1e-14).solve(100, t -> (gm + bm * t * t / 2) * t - 0.1, 0, 0.2);
    double cos = Math.cos(Math.atan(tan));
    double high = (0.5 - draft + 1.5 * tan) * cos;
    double low = (0.5 - draft - 1.5 * tan) * cos;
    assertThat(found.get(1).value().orElseThrow()).isCloseTo(high, within(1e-5));
    assertThat(found.get(2).value().orElseThrow()).isCloseTo(-low, within(1e-5));
  }

  @Test
  void a_boat_that_rolls_over_when_swamped_falls_short_and_says_how_it_ends() {
    BoatModel model =
        boat(150)
            .weightlessShell()
            .proven("port tank", Span.ALL, new Span(0.4, 0.6), Span.ALL)
            .model();
    Finding heel = findings(new SwampedLevel(RULES), model).get(0);
    assertThat(heel.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(FindingText.note(heel)).isEqualTo("it rolls over and lies on its side");
    assertThat(Math.toDegrees(heel.value().orElseThrow())).isGreaterThan(45);
  }

  @Test
  void a_boat_that_sinks_when_swamped_falls_short_and_says_so() {
    BoatModel model = boat(150).weightlessShell().model();
    List<Finding> found = findings(new SwampedLevel(RULES), model);
    assertThat(found)
        .allMatch(f -> f.outcome() == Outcome.FALLS_SHORT && f.value().isEmpty())
        .allMatch(f -> FindingText.note(f).startsWith("it sinks"));
  }
}
