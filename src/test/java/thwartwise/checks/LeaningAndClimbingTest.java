package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.freeboard;
import static thwartwise.checks.OnPaper.heel;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;

/** People over the rail and on their knees, on the box of {@link OnPaper}. */
class LeaningAndClimbingTest {
  private static final double HEEL_LIMIT = Math.toRadians(10 + Math.pow(21, 3) / 600);

  // Over the rail, 0.6 m out, 0.10 m above it: G of 95 kg at 0.60.
  @Test
  void leaning_out_puts_the_weight_over_the_rail_and_a_little_above_it() {
    List<Finding> found =
        findings(new LeaningOut(RULES), trial(OnPaper.boat(300), person(95, 0.4)));
    double heel = heel(300, 95, 0.6, 0.6);
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly("leaning out over the side", "leaning out over the side, freeboard left");
    assertThat(found).allMatch(f -> f.role() == Role.FORBIDS_AN_ACT);
    assertThat(value(found.get(0))).isCloseTo(heel, within(1e-8));
    assertThat(found.get(0).limit()).isCloseTo(HEEL_LIMIT, within(1e-12));
    assertThat(value(found.get(1))).isCloseTo(freeboard(395, heel), within(1e-8));
    assertThat(found.get(1).limit()).isEqualTo(0.05);
    assertThat(FindingText.condition(found.get(0))).isEqualTo("on paper; crew leaning out to port");
    assertThat(found).allMatch(f -> f.outcome() == Outcome.MEETS);
  }

  // The mass at which 0.05 m are left is found on paper.
  @Test
  void leaning_out_falls_short_just_past_the_mass_paper_finds() {
    double hull = OnPaper.root(m -> freeboard(m + 95, heel(m, 95, 0.6, 0.6)) - 0.05, 700, 1500);
    assertThat(leftLeaningOut(hull - 1)).isEqualTo(Outcome.BORDERLINE);
    assertThat(leftLeaningOut(hull + 1)).isEqualTo(Outcome.FALLS_SHORT);
  }

  private static Outcome leftLeaningOut(double hull) {
    return findings(new LeaningOut(RULES), trial(OnPaper.boat(hull), person(95, 0.4)))
        .get(1)
        .outcome();
  }

  // Of two people only one leans: 95 x 0.6 of 300 + 95 + 60 kg, the other upright, at 0.25 over the
  // middle; as heavy as a hull of 360 kg with its G at (300 x 0.2 + 60 x 0.25)/360.
  @Test
  void the_others_stay_seated_while_the_heaviest_leans_out() {
    Body light = person(60, 0.4);
    List<Finding> found =
        findings(new LeaningOut(RULES), trial(OnPaper.boat(300), light, person(95, 0.4)));
    double height = (300 * 0.2 + 60 * 0.25 + 95 * 0.6) / 455;
    double tangent = OnPaper.tangent(0.455, OnPaper.PLANE, 3 * 1.728 / 12, height, 95 * 0.6 / 455);
    assertThat(value(found.get(0))).isCloseTo(Math.atan(tangent), within(1e-8));
  }

  // The swimmer's whole weight on the rail, 0.6 m out and 0.5 m up; nobody left aboard.
  @Test
  void climbing_in_over_the_side_puts_the_whole_weight_on_the_rail() {
    List<Finding> found =
        findings(new ClimbingIn(RULES), trial(OnPaper.boat(300), person(95, 0.4)));
    double heel = heel(300, 95, 0.6, 0.5);
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "climbing in over the side",
            "climbing in over the side, freeboard left",
            "climbing in over the stern",
            "climbing in over the stern, freeboard left");
    assertThat(found).allMatch(f -> f.role() == Role.FORBIDS_AN_ACT);
    assertThat(value(found.get(0))).isCloseTo(heel, within(1e-8));
    assertThat(value(found.get(1))).isCloseTo(freeboard(395, heel), within(1e-8));
    assertThat(FindingText.condition(found.get(0)))
        .isEqualTo("on paper; crew climbing in over the side to port");
  }

  // The same turned lengthwise: I = 1.2 x 3^3/12, weight 1.5 m aft of the middle.
  @Test
  void climbing_in_over_the_stern_puts_it_on_the_middle_of_the_stern() {
    List<Finding> found =
        findings(new ClimbingIn(RULES), trial(OnPaper.boat(300), person(95, 0.4)));
    double height = (300 * 0.2 + 95 * 0.5) / 395;
    double tangent = OnPaper.tangent(0.395, OnPaper.PLANE, 1.2 * 27 / 12, height, 95 * 1.5 / 395);
    double trim = Math.atan(tangent);
    assertThat(1.5 * tangent).as("bow under on paper").isLessThan(0.395 / 3.6);
    assertThat(value(found.get(2))).isCloseTo(0, within(1e-9));
    assertThat(value(found.get(3)))
        .isCloseTo((0.5 - 0.395 / 3.6) * Math.cos(trim) - 1.5 * Math.sin(trim), within(1e-8));
    assertThat(FindingText.note(found.get(3))).isEqualTo("lowest at the rail, near aft");
  }

  @Test
  void climbing_in_falls_short_just_past_the_mass_paper_finds() {
    double hull = OnPaper.root(m -> freeboard(m + 95, heel(m, 95, 0.6, 0.5)) - 0.05, 700, 1500);
    assertThat(leftClimbingIn(hull - 1)).isEqualTo(Outcome.BORDERLINE);
    assertThat(leftClimbingIn(hull + 1)).isEqualTo(Outcome.FALLS_SHORT);
  }

  private static Outcome leftClimbingIn(double hull) {
    return findings(new ClimbingIn(RULES), trial(OnPaper.boat(hull), person(95, 0.4)))
        .get(1)
        .outcome();
  }

  // A boat drifting empty: the adult of the rule set, 95 kg, comes aboard.
  @Test
  void with_nobody_aboard_somebody_of_the_rule_sets_mass_climbs_in() {
    List<Finding> found = findings(new ClimbingIn(RULES), trial(OnPaper.boat(300)));
    assertThat(value(found.get(0))).isCloseTo(heel(300, 95, 0.6, 0.5), within(1e-8));
    assertThat(FindingText.condition(found.get(0)))
        .isEqualTo("on paper; somebody climbing in over the side to port");
  }

  // One of two swims: the other sits on, 60 kg at 0.25; the heavier swimmer is the worse.
  @Test
  void each_of_the_crew_is_the_swimmer_in_turn() {
    LoadedBoat two = trial(OnPaper.boat(300), person(60, 0.4), person(95, 0.4));
    double height = (300 * 0.2 + 60 * 0.25 + 95 * 0.5) / 455;
    double tangent = OnPaper.tangent(0.455, OnPaper.PLANE, 3 * 1.728 / 12, height, 95 * 0.6 / 455);
    assertThat(value(findings(new ClimbingIn(RULES), two).get(0)))
        .isCloseTo(Math.atan(tangent), within(1e-8));
    assertThat(PeopleMoves.climbingInOverTheSide(two, 95)).hasSize(2);
    assertThat(PeopleMoves.climbingInOverTheStern(two, 95))
        .extracting(FindingText::condition)
        .containsOnly("on paper; crew climbing in over the stern");
  }

  // The weight is on the rail at the bow: 1.5 m forward, the freeboard left is that at the stem.
  @Test
  void over_the_bow_the_bow_goes_down() {
    LoadedBoat climbing =
        PeopleMoves.climbingInOverTheBow(trial(OnPaper.boat(300), person(95, 0.4)), 95).get(0);
    assertThat(climbing.people()).isEmpty();
    double height = (300 * 0.2 + 95 * 0.5) / 395;
    double tangent = OnPaper.tangent(0.395, OnPaper.PLANE, 1.2 * 27 / 12, height, 95 * 1.5 / 395);
    assertThat(climbing.atRest().worst().orElseThrow().trim())
        .isCloseTo(Math.atan(tangent), within(1e-8));
  }

  // On their knees on the floor, upright: carried 0.15 above it at 0.17, three fifths of 0.4 m out.
  @Test
  void kneeling_lowers_the_weight_to_the_floor() {
    List<Finding> found = findings(new Kneeling(RULES), trial(OnPaper.boat(300), person(95, 0.4)));
    double heel = heel(300, 95, 0.24, 0.17);
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "kneeling, three fifths to one side",
            "kneeling, three fifths to one side, freeboard left");
    assertThat(found).allMatch(f -> f.role() == Role.INFORMATION);
    assertThat(value(found.get(0))).isCloseTo(heel, within(1e-8));
    assertThat(value(found.get(1))).isCloseTo(freeboard(395, heel), within(1e-8));
    assertThat(heel).isLessThan(heel(300, 95, 0.24, 0.25));
  }

  @Test
  void with_nobody_aboard_nobody_leans_kneels_or_jumps() {
    LoadedBoat nobody = trial(OnPaper.boat(300));
    for (Check check :
        List.of(
            new LeaningOut(RULES),
            new Kneeling(RULES),
            new SuddenShift(RULES),
            new LowSide(RULES),
            new HoldingOnToOneSide(RULES))) {
      assertThat(findings(check, nobody)).as(check.toString()).isEmpty();
    }
  }

  // 0.7 m of beam under a hull of 20 kg: with 95 kg over the rail there is no balance upright.
  @Test
  void a_narrow_boat_is_laid_over_by_somebody_leaning_out() {
    BoxBoat narrow = BoxBoat.of(3, 0.7, 0.5).hull(20, 0.2);
    List<Finding> found = findings(new LeaningOut(RULES), trial(narrow, person(95, 0.25)));
    assertThat(found).allMatch(f -> f.outcome() == Outcome.FALLS_SHORT);
  }
}
