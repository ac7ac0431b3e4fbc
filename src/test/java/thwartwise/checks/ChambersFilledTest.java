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
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Opening;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;

/** Chambers that fill with the boat, on the box of {@link OnPaper}. */
class ChambersFilledTest {

  private static Opening hatch(String into, String lid) {
    return new Opening(
        "locker hatch",
        Vector3.of(2.3, 0, 0.3),
        0.3,
        true,
        Optional.of(lid).filter(s -> !s.isEmpty()),
        Optional.of(into),
        Optional.empty());
  }

  // 840 l less the bow tank's 420, less 300 kg; 20 kg for the one aboard, who floats by themselves.
  @Test
  void a_hatch_left_open_costs_what_losing_its_chamber_costs() {
    LoadedBoat trial = trial(tanks(300).opening(hatch("bow tank", "lid")), person(95, 0.4));
    List<Finding> found = findings(new HatchLeftOpen(RULES), trial);
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "leaving the locker hatch open, lift to spare when swamped",
            "leaving the locker hatch open, out of upright when swamped");
    assertThat(found).allMatch(f -> f.role() == Role.FORBIDS_AN_ACT);
    assertThat(value(found.get(0))).isCloseTo(420 - 300, within(0.01));
    assertThat(found.get(0).limit()).isEqualTo(20);
    assertThat(FindingText.condition(found.get(0)))
        .isEqualTo("on paper; the locker hatch left open");
    Finding lost = findings(new ChambersLost(RULES), trial).get(1);
    assertThat(FindingText.check(lost)).isEqualTo("swamped, bow tank lost, out of upright");
    assertThat(found.get(1).value()).isEqualTo(lost.value());
    assertThat(found.get(1).outcome()).isEqualTo(lost.outcome());
  }

  // Held up at one end only, the box hangs down: no heel at all, and yet no way to lie.
  @Test
  void a_boat_left_standing_on_end_falls_short_though_it_does_not_heel() {
    LoadedBoat trial = trial(tanks(300).opening(hatch("bow tank", "lid")), person(95, 0.4));
    Finding open = findings(new HatchLeftOpen(RULES), trial).get(1);
    assertThat(FindingText.note(open)).isEqualTo("swamped like this, it stands on its bow");
    assertThat(open.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(value(open)).isGreaterThan(Math.toRadians(45));
  }

  // 420 - m against 20 a head: 399 kg as measured; 378 + 99.75 - 1.05 (m + 95) with the allowance.
  @Test
  void the_lift_left_meets_is_borderline_and_falls_short_where_paper_says() {
    assertThat(leftOpen(340)).isEqualTo(Outcome.MEETS);
    assertThat(leftOpen(342)).isEqualTo(Outcome.BORDERLINE);
    assertThat(leftOpen(399)).isEqualTo(Outcome.BORDERLINE);
    assertThat(leftOpen(401)).isEqualTo(Outcome.FALLS_SHORT);
  }

  private static Outcome leftOpen(double mass) {
    LoadedBoat trial = trial(tanks(mass).opening(hatch("bow tank", "lid")), person(95, 0.4));
    return findings(new HatchLeftOpen(RULES), trial).get(0).outcome();
  }

  @Test
  void a_chamber_that_counts_for_nothing_has_nothing_to_lose_through_its_hatch() {
    BoxBoat claimed =
        OnPaper.boat(300).claimed("bow tank", new Span(2.3, 3)).opening(hatch("bow tank", "lid"));
    assertThat(findings(new HatchLeftOpen(RULES), trial(claimed))).isEmpty();
  }

  @Test
  void an_opening_nothing_shuts_is_no_hatch_to_be_left_open() {
    BoxBoat hole = tanks(300).opening(hatch("bow tank", ""));
    assertThat(findings(new HatchLeftOpen(RULES), trial(hole))).isEmpty();
  }

  // Side tanks of 0.2 m, one of a pair behind the hatch: the pair gone it lies level on the
  // rest, one gone it lies over. The hatch does not say which, so the worse of all counts.
  @Test
  void a_hatch_into_one_of_a_pair_is_judged_with_one_and_with_both_filled() {
    Chamber pair =
        new Chamber(
            "side tank",
            new Box(Span.ALL, new Span(0.3, 0.6), Span.ALL),
            BoxBoat.proven("side tank", new Box(Span.ALL, Span.ALL, Span.ALL), Optional.empty())
                .filling(),
            Optional.empty(),
            true);
    BoxBoat boat =
        OnPaper.boat(250)
            .weightlessShell()
            .proven("keel tank", Span.ALL, new Span(-0.3, 0.3), new Span(0, 0.1))
            .proven("stern top", new Span(0, 0.2), new Span(-0.3, 0.3), new Span(0.1, 0.5))
            .proven("bow top", new Span(2.8, 3), new Span(-0.3, 0.3), new Span(0.1, 0.5))
            .chamber(pair)
            .opening(hatch("side tank", "lid"));
    List<Finding> found = findings(new HatchLeftOpen(RULES), trial(boat));
    assertThat(value(found.get(0))).isCloseTo(180 + 96 - 250, within(0.05));
    assertThat(found.get(1).outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  private static BoxBoat three() {
    return OnPaper.boat(200)
        .weightlessShell()
        .proven("small", new Span(0, 0.4))
        .proven("large", new Span(1, 1.8))
        .proven("middling", new Span(2.4, 3));
  }

  // 240, 480 and 360 l; the two largest gone leave 240 for 200 kg, and for 95 more of a body: its
  // legs, 32 %, stand before the large tank, the rest from 0.25 to 1.10 m lifts above the tank's
  // 0.5:
  // 21 kg to spare; 216 + 1.05 x (30.4 + 45.6) - 1.05 x 295 = -13.95 with the allowance.
  @Test
  void the_two_largest_are_lost_together() {
    List<Finding> found = findings(new ChambersLost(RULES), trial(three(), person(95, 0.4)));
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "swamped, small lost, out of upright",
            "swamped, large lost, out of upright",
            "swamped, middling lost, out of upright",
            "swamped, two largest lost, lift to spare",
            "swamped, two largest lost, out of upright");
    assertThat(found).allMatch(f -> f.role() == Role.INFORMATION);
    assertThat(value(findings(new ChambersLost(RULES), trial(three())).get(3)))
        .isCloseTo(240 - 200, within(0.01));
    assertThat(found.get(3).limit()).isEqualTo(20);
    assertThat(value(found.get(3))).isCloseTo(240 - 295 + 30.4 + 64.6 * 0.6 / 0.85, within(0.01));
    assertThat(FindingText.note(found.get(3)))
        .isEqualTo("With the allowance for tape and scales it is -14 kg: large and middling");
  }

  // Without the middle tank: ends of 0.4 and 0.6 m, even keel across; the worst pose is upright.
  @Test
  void a_boat_that_lies_level_without_its_middle_chamber_has_no_heel() {
    Finding large = findings(new ChambersLost(RULES), trial(three())).get(1);
    // Ends of unlike length trim it a little.
    assertThat(value(large)).isBetween(0.0, Math.toRadians(2));
    assertThat(large.outcome()).isEqualTo(Outcome.MEETS);
    assertThat(large.limit()).isCloseTo(Math.toRadians(10), within(1e-12));
  }

  @Test
  void one_chamber_has_no_second_and_none_has_nothing_to_lose() {
    BoxBoat one = OnPaper.boat(200).weightlessShell().proven("only", new Span(1, 2));
    assertThat(findings(new ChambersLost(RULES), trial(one)))
        .extracting(FindingText::check)
        .containsExactly("swamped, only lost, out of upright");
    assertThat(findings(new ChambersLost(RULES), trial(OnPaper.boat(200)))).isEmpty();
    BoxBoat claimed = OnPaper.boat(200).claimed("tank", new Span(0, 1));
    assertThat(findings(new ChambersLost(RULES), trial(claimed))).isEmpty();
  }
}
