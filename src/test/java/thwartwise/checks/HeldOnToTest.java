package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.tanks;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.boat.Place;
import thwartwise.geometry.Span;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.report.CheckWords;

/** Boats whose crew holds on to them from the water: canoes by form, and others that say so. */
class HeldOnToTest {
  private static final List<Check> SAT_IN =
      List.of(new SwampedLevel(RULES), new SwampedMargin(RULES));

  /** A box of 4.2 by 0.9 m, a canoe by its form, on a tank of 0.5 m at each end. */
  private static BoxBoat canoe() {
    return BoxBoat.of(4.2, 0.9, 0.35)
        .hull(30, 0.15)
        .weightlessShell()
        .proven("stern tank", new Span(0, 0.5))
        .proven("bow tank", new Span(3.7, 4.2));
  }

  private static Body paddler(double mass) {
    return Body.seated("paddler", mass, new Place("seat", 2.1, 0.22, 0.15, 1), 0, 0.02);
  }

  private static LoadedBoat heldOn(CrewWhenSwamped what) {
    return trial(tanks(300).boat().whenSwamped(what), person(95, 0.4), person(60, 0.4));
  }

  @Test
  void a_boat_that_is_held_on_to_is_not_asked_how_it_lies_with_its_crew_in_it() {
    for (Check check : SAT_IN) {
      assertThat(findings(check, heldOn(CrewWhenSwamped.HOLD_ON))).as(check.toString()).isEmpty();
      assertThat(findings(check, heldOn(CrewWhenSwamped.SIT_IN_IT)))
          .as(check.toString())
          .isNotEmpty();
      assertThat(findings(check, trial(canoe(), paddler(60)))).as(check.toString()).isEmpty();
    }
  }

  // Two tanks of 420 l less 300 kg: 540 kg, and 20 kg for each of the two in the water.
  @Test
  void its_limit_is_lift_for_everybody_in_the_water() {
    Finding lift = findings(new SwampedLift(RULES), heldOn(CrewWhenSwamped.HOLD_ON)).get(0);
    assertThat(value(lift)).isCloseTo(540, within(0.01));
    assertThat(lift.limit()).isEqualTo(40);
    assertThat(lift.role()).isEqualTo(Role.LIMITS_CREW);
    assertThat(FindingText.condition(lift))
        .isEqualTo("on paper; everyone in the water with hands on it");
    assertThat(FindingText.note(lift))
        .isEqualTo("everyone in the water with hands on it: nobody sits in it");
    assertThat(findings(new SwampedLift(RULES), heldOn(CrewWhenSwamped.SIT_IN_IT)).get(0).note())
        .isEqualTo(Note.NONE);
  }

  // 840 l less 780 kg are 60 kg: three times 20, once the allowance is off not even one.
  @Test
  void one_too_many_to_hold_on_falls_short() {
    Body one = person(60, 0.4);
    LoadedBoat three = trial(tanks(779).boat().whenSwamped(CrewWhenSwamped.HOLD_ON), one, one, one);
    LoadedBoat four = trial(tanks(781).boat().whenSwamped(CrewWhenSwamped.HOLD_ON), one, one, one);
    assertThat(findings(new SwampedLift(RULES), three).get(0).outcome())
        .isEqualTo(Outcome.BORDERLINE);
    assertThat(findings(new SwampedLift(RULES), four).get(0).outcome())
        .isEqualTo(Outcome.FALLS_SHORT);
  }

  // Narrow tanks in the ends, 2 x 0.5 x 0.24 x 0.35 m: level swamped, I = 1.0 x 0.24³/12 = 0.0012
  // m⁴
  // gives 0.01 m of BM over 0.125 m³, and the weight at the seat rolls it.
  @Test
  void sitting_in_a_swamped_canoe_is_what_nobody_does() {
    BoxBoat narrow =
        BoxBoat.of(4.2, 0.9, 0.35)
            .hull(30, 0.15)
            .weightlessShell()
            .proven("stern tank", new Span(0, 0.5), new Span(-0.12, 0.12), Span.ALL)
            .proven("bow tank", new Span(3.7, 4.2), new Span(-0.12, 0.12), Span.ALL);
    List<Finding> found = findings(new SittingInItSwamped(RULES), trial(narrow, paddler(95)));
    assertThat(found).allMatch(f -> f.role() == Role.FORBIDS_AN_ACT);
    assertThat(found)
        .extracting(f -> CheckWords.subject(f.question().subject()))
        .containsOnly("sitting in it when it is swamped");
    assertThat(found).anyMatch(f -> f.outcome() == Outcome.FALLS_SHORT);
    assertThat(findings(new SittingInItSwamped(RULES), trial(tanks(300), person(95, 0.4))))
        .isEmpty();
  }

  // On their knees the weight is carried 0.15 m above the floor, at 0.17 m; on the seat at 0.22. BM
  // V = 4.2 x
  // 0.9³/12 = 0.2552 m⁴ over 0.125 m³ of water.
  @Test
  void the_crew_of_a_canoe_kneels_and_sitting_up_is_an_act() {
    LoadedBoat trial = trial(canoe(), paddler(95));
    double inertia = 4.2 * Math.pow(0.9, 3) / 12;
    double kneeling = OnPaper.tangent(0.125, 3.78, inertia, g(0.17), 95 * 0.09 / 125);
    double sitting = OnPaper.tangent(0.125, 3.78, inertia, g(0.22), 95 * 0.09 / 125);
    assertThat(0.45 * sitting).as("bottom under on paper").isLessThan(0.125 / 3.78);
    Finding knees = findings(new ThreeFifthsToOneSide(RULES), trial).get(0);
    Finding seats = findings(new SittingUp(RULES), trial).get(0);
    assertThat(value(knees)).isCloseTo(Math.atan(kneeling), within(1e-8));
    assertThat(value(seats)).isCloseTo(Math.atan(sitting), within(1e-8));
    assertThat(FindingText.condition(knees))
        .isEqualTo("on paper; everyone kneeling; everyone three fifths of the way to port");
    assertThat(FindingText.check(seats)).isEqualTo("sitting on the seats and not kneeling");
    assertThat(seats.role()).isEqualTo(Role.FORBIDS_AN_ACT);
  }

  private static double g(double person) {
    return (30 * 0.15 + 95 * person) / 125;
  }

  // Six inches of side, as the trade reckons.
  @Test
  void a_canoe_needs_six_inches_of_side() {
    Finding side = findings(new FreeboardAtRest(RULES), trial(canoe(), paddler(95))).get(0);
    assertThat(side.limit()).isEqualTo(0.15);
  }
}
