package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.BEAM;
import static thwartwise.checks.OnPaper.DEPTH;
import static thwartwise.checks.OnPaper.LENGTH;
import static thwartwise.checks.OnPaper.PLANE;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.report.CheckWords;

/** A chamber with water in it, afloat, on the box of {@link OnPaper}. */
class ChamberHoledTest {
  private static final double INERTIA = LENGTH * BEAM * BEAM * BEAM / 12;

  private static BoxBoat box(double mass) {
    return OnPaper.boat(mass).weightlessShell();
  }

  private static CheckReading worst(BoxBoat boat, int which) {
    return new ChamberHoled(RULES).readings(trial(boat)).get(which);
  }

  // A side tank 0.2 by 0.2 m from end to end: 120 kg of water full, its middle at 0.5 out, 0.1 up.
  // Full it is a weight; half full it is half of that, and its surface cannot make up for it.
  @Test
  void a_full_side_tank_heels_the_box_as_a_weight_on_paper() {
    BoxBoat boat = box(600).proven("side tank", Span.ALL, new Span(0.4, 0.6), new Span(0, 0.2));
    double mass = 720;
    double g = (600 * 0.2 + 120 * 0.1) / mass;
    double tangent = OnPaper.tangent(mass / 1000, PLANE, INERTIA, g, 120 * 0.5 / mass);
    assertThat(BEAM / 2 * tangent).isLessThan(mass / 1000 / PLANE);
    CheckReading heel = worst(boat, 0);
    assertThat(FindingText.check(heel)).isEqualTo("launching without a look into the side tank");
    assertThat(heel.value().getAsDouble()).isCloseTo(Math.atan(tangent), within(1e-5));
    assertThat(FindingText.condition(heel)).isEqualTo("on paper; side tank full");
    CheckReading freeboard = worst(boat, 1);
    assertThat(FindingText.check(freeboard))
        .isEqualTo("launching without a look into the side tank, freeboard left");
    assertThat(freeboard.value().getAsDouble())
        .isCloseTo(OnPaper.freeboard(mass, Math.atan(tangent)), within(1e-5));
  }

  // A tank over the whole bottom, 0.3 m deep and half full: its 540 kg run to the low side. Wall-
  // sided water gives i tan (1 + tan²/2)... of moment, i the same 3 x 1.2³/12 as the waterplane's:
  // what the sea gives by its surface the water takes, and G decides. GM = d/2 + I/V - zG - i/V.
  @Test
  void a_half_full_tank_takes_the_stiffness_of_its_surface() {
    double mass = 400;
    double water = 540;
    double all = mass + water;
    double draft = all / 1000 / PLANE;
    double g = (mass * 0.2 + water * 0.075) / all;
    double gm = draft / 2 + INERTIA / (all / 1000) - g - INERTIA / (all / 1000);
    assertThat(gm).isCloseTo(draft / 2 - g, within(1e-12));
    BoxBoat boat = box(mass).proven("double bottom", Span.ALL, Span.ALL, new Span(0, 0.3));
    LoadedBoat half = halfFull(boat, "double bottom");
    assertThat(half.atRest().worst().orElseThrow().metacentricHeight()).isCloseTo(gm, within(1e-4));
  }

  private static LoadedBoat halfFull(BoxBoat boat, String name) {
    LoadedBoat trial = trial(boat);
    return ChamberHoled.halfFull(
        trial,
        trial.model().spaces().stream()
            .filter(s -> s.name().equals(name))
            .findFirst()
            .orElseThrow());
  }

  // Both of a pair are alike, and the act is named once.
  @Test
  void a_pair_of_tanks_is_one_act() {
    Chamber pair =
        new Chamber(
            "side tank",
            new Box(Span.ALL, new Span(0.4, 0.6), new Span(0, 0.2)),
            BoxBoat.proven("side tank", new Box(Span.ALL, Span.ALL, Span.ALL), Optional.empty())
                .filling(),
            Optional.empty(),
            true);
    List<Finding> found = findings(new ChamberHoled(RULES), trial(box(600).chamber(pair)));
    assertThat(found)
        .extracting(f -> CheckWords.subject(f.question().subject()))
        .containsOnly("launching without a look into the side tank");
    assertThat(found).hasSize(2).allMatch(f -> f.role() == Role.FORBIDS_AN_ACT);
  }

  // 450 kg 0.45 m out in a box of 300 kg: 0.27 m of offset over a GM of some 0.45 m, about 30
  // degrees against the 25.4 of the offset-load limit.
  @Test
  void a_large_side_tank_full_of_water_forbids_a_launch_without_a_look() {
    BoxBoat boat = box(300).proven("side tank", Span.ALL, new Span(0.3, 0.6), new Span(0, 0.5));
    assertThat(findings(new ChamberHoled(RULES), trial(boat)))
        .allMatch(f -> f.outcome() == Outcome.FALLS_SHORT);
  }

  @Test
  void foam_and_open_spaces_are_not_holed() {
    Chamber foam =
        new Chamber(
            "foam",
            new Box(new Span(0, 0.5), Span.ALL, Span.ALL),
            new Filling.Foam(true, true),
            Optional.empty(),
            false);
    assertThat(findings(new ChamberHoled(RULES), trial(box(300).chamber(foam)))).isEmpty();
    assertThat(value(findings(new FreeboardAtRest(RULES), trial(box(300))).get(0)))
        .isCloseTo(DEPTH - 0.3 / PLANE, within(1e-6));
  }
}
