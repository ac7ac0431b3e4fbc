package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.afloat.BalanceCache;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.EquilibriumUnderForces.Force;
import thwartwise.afloat.Lift;
import thwartwise.afloat.Pool;
import thwartwise.afloat.Pose;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Opening;
import thwartwise.boat.Place;
import thwartwise.boat.Side;
import thwartwise.boat.Space;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;

/** A rest that is remembered is that of the very load, or of its mirror image; of no other. */
class CachedBalancesTest {
  private static final BoatModel CRAFT = boat(0);
  private static final List<Body> CREW = List.of(at(1.5, 0.25, 80, 0.25), at(1.5, -0.05, 80, 0.25));

  private static BoatModel boat(double batteryToPort) {
    return BoxBoat.of(3, 1.3, 0.5)
        .hull(90, 0.2)
        .weightlessShell()
        .proven("stern tank", new Span(0, 0.6))
        .proven("bow tank", new Span(2.2, 3))
        .kit(
            new Kit(
                "battery",
                20,
                Vector3.of(1.2, batteryToPort, 0.1),
                Optional.of(0.01),
                true,
                Optional.empty()))
        .model();
  }

  private static Body at(double x, double y, double mass, double seat) {
    return Body.seated("crew", mass, new Place("thwart", x, seat, 0.45, 2), y, 0.02);
  }

  private static LoadedBoat trial(BoatModel model, List<Body> people) {
    return LoadedBoat.of(model, people);
  }

  private static Pose only(Equilibria rest) {
    assertThat(rest.reached()).hasSize(1);
    return rest.reached().get(0);
  }

  private static void assertAlike(Equilibria found, Equilibria anew) {
    Pose pose = only(found);
    Pose expected = only(anew);
    assertThat(pose.heel()).isCloseTo(expected.heel(), within(1e-8));
    assertThat(pose.trim()).isCloseTo(expected.trim(), within(1e-8));
    assertThat(pose.plane().height()).isCloseTo(expected.plane().height(), within(1e-8));
    assertThat(pose.restoring().heel()).isCloseTo(expected.restoring().heel(), within(1e-6));
    assertThat(pose.restoring().product()).isCloseTo(expected.restoring().product(), within(1e-6));
  }

  // The last: two bodies with the same centre of gravity, elsewhere.
  @ParameterizedTest
  @CsvSource({
    "1.5, 0.25, 80.0001, 0.25, -0.05",
    "1.5001, 0.25, 80, 0.25, -0.05",
    "1.5, 0.2501, 80, 0.25, -0.05",
    "1.5, 0.25, 80, 0.2501, -0.05",
    "1.5, 0.40, 80, 0.25, -0.20"
  })
  void another_load_is_not_taken_for_one_remembered(
      double x, double y, double mass, double seat, double otherY) {
    BalanceCache known = new BalanceCache();
    LoadedBoat before = trial(CRAFT, CREW).hurried(known);
    before.atRest();
    before.swampedRest(List.of());
    List<Body> others = List.of(at(x, y, mass, seat), at(1.5, otherY, 80, 0.25));
    LoadedBoat now = trial(CRAFT, others).hurried(known);
    LoadedBoat anew = trial(CRAFT, others).hurried();
    assertAlike(now.atRest(), anew.atRest());
    assertAlike(now.swampedRest(List.of()), anew.swampedRest(List.of()));
  }

  @Test
  void more_weight_at_the_very_centre_of_gravity_is_another_load() {
    BalanceCache known = new BalanceCache();
    LoadedBoat before = trial(CRAFT, CREW);
    Loading.Weight more = new Loading.Weight(0.5, before.loading().centre());
    before.hurried(known).atRest();
    before.hurried(known).swampedRest(List.of());
    LoadedBoat now = before.with(more).hurried(known);
    LoadedBoat anew = before.with(more).hurried();
    assertAlike(now.atRest(), anew.atRest());
    assertAlike(now.swampedRest(List.of()), anew.swampedRest(List.of()));
  }

  private static List<Body> mirrored() {
    return CREW.stream().map(b -> b.at(-b.y())).toList();
  }

  @Test
  void a_mirror_image_lies_to_the_other_side() {
    BalanceCache known = new BalanceCache();
    LoadedBoat before = trial(CRAFT, CREW).hurried(known);
    assertThat(only(before.atRest()).heel()).isNotZero();
    assertThat(only(before.swampedRest(List.of())).heel()).isNotZero();
    LoadedBoat now = trial(CRAFT, mirrored()).hurried(known);
    LoadedBoat anew = trial(CRAFT, mirrored()).hurried();
    assertThat(only(now.atRest()).heel()).isEqualTo(-only(before.atRest()).heel());
    assertThat(only(now.swampedRest(List.of())).heel())
        .isEqualTo(-only(before.swampedRest(List.of())).heel());
    assertAlike(now.atRest(), anew.atRest());
    assertAlike(now.swampedRest(List.of()), anew.swampedRest(List.of()));
  }

  // What lifts of the battery lies to port: swamped, the mirror image is another boat.
  @Test
  void a_boat_that_is_not_alike_on_both_sides_has_no_mirror_image() {
    BoatModel lopsided = boat(0.3);
    assertThat(lopsided.isAlikeAfloat()).isTrue();
    assertThat(lopsided.isAlikeSwamped()).isFalse();
    BalanceCache known = new BalanceCache();
    trial(lopsided, CREW).hurried(known).swampedRest(List.of());
    trial(lopsided, CREW).hurried(known).atRest();
    LoadedBoat now = trial(lopsided, mirrored()).hurried(known);
    LoadedBoat anew = trial(lopsided, mirrored()).hurried();
    assertAlike(now.atRest(), anew.atRest());
    assertAlike(now.swampedRest(List.of()), anew.swampedRest(List.of()));
  }

  private static BoxBoat hull() {
    return BoxBoat.of(3, 1.3, 0.5).hull(90, 0.2).weightlessShell();
  }

  private static BoxBoat tanks(double bowTankFrom) {
    return hull()
        .proven("stern tank", new Span(0, 0.6))
        .proven("bow tank", new Span(bowTankFrom, 3));
  }

  private static BoatModel refitted(BoatModel before, BoxBoat after) {
    return before.fittedOut(after.boat(), BoxBoat.TODAY);
  }

  @Test
  void a_boat_with_another_chamber_shares_dry_rests_and_no_swamped_ones() {
    BoatModel before = tanks(2.2).model();
    BoatModel after = refitted(before, tanks(2.1));
    BalanceCache known = new BalanceCache();
    Equilibria dry = trial(before, CREW).hurried(known).atRest();
    trial(before, CREW).hurried(known).swampedRest(List.of());
    LoadedBoat now = trial(after, CREW).hurried(known);
    assertThat(now.atRest()).isSameAs(dry);
    assertAlike(now.swampedRest(List.of()), trial(after, CREW).hurried().swampedRest(List.of()));
  }

  @Test
  void a_chamber_that_counts_less_is_another_boat_when_swamped() {
    BoatModel before = tanks(2.2).model();
    BoatModel after =
        refitted(
            before,
            hull().proven("stern tank", new Span(0, 0.6)).claimed("bow tank", new Span(2.2, 3)));
    BalanceCache known = new BalanceCache();
    trial(before, CREW).hurried(known).swampedRest(List.of());
    Equilibria now = trial(after, CREW).hurried(known).swampedRest(List.of());
    Equilibria anew = trial(after, CREW).hurried().swampedRest(List.of());
    assertThat(now.reached()).hasSameSizeAs(anew.reached());
    assertThat(now.ending()).isEqualTo(anew.ending());
  }

  @Test
  void an_opening_changes_what_floods_and_no_swamped_rest() {
    BoatModel before = tanks(2.2).model();
    Opening notch = new Opening("notch", Vector3.of(0, 0, 0.3), 0.3, true);
    BoatModel after = refitted(before, tanks(2.2).opening(notch));
    assertThat(after.dryKey()).isNotEqualTo(before.dryKey());
    BalanceCache known = new BalanceCache();
    Equilibria swamped = trial(before, CREW).hurried(known).swampedRest(List.of());
    assertThat(trial(after, CREW).hurried(known).swampedRest(List.of())).isSameAs(swamped);
  }

  @Test
  void kit_that_lifts_elsewhere_is_another_boat_when_swamped() {
    BoatModel before = boat(0);
    Boat moved = boat(0.3).boat();
    BoatModel after = before.fittedOut(moved, BoxBoat.TODAY);
    assertThat(after.swampedKey()).isNotEqualTo(before.swampedKey());
    assertThat(after.dryKey()).isEqualTo(before.dryKey());
  }

  @Test
  void other_water_is_another_boat_dry_and_swamped() {
    BoatModel fresh = tanks(2.2).model();
    BoatModel salt = refitted(fresh, tanks(2.2).salt());
    BalanceCache known = new BalanceCache();
    Equilibria dry = trial(fresh, CREW).hurried(known).atRest();
    trial(fresh, CREW).hurried(known).swampedRest(List.of());
    LoadedBoat now = trial(salt, CREW).hurried(known);
    LoadedBoat anew = trial(salt, CREW).hurried();
    assertThat(only(now.atRest()).plane().height()).isNotEqualTo(only(dry).plane().height());
    assertAlike(now.atRest(), anew.atRest());
    assertAlike(now.swampedRest(List.of()), anew.swampedRest(List.of()));
  }

  /** Kit lifts up to its own weight, so its mass decides as well as its litres. */
  @Test
  void kit_of_the_same_litres_and_another_mass_is_another_boat_when_swamped() {
    BoatModel light = tanks(2.2).kit(box(3)).model();
    BoatModel heavy = refitted(light, tanks(2.2).kit(box(6)));
    assertThat(heavy.swampedKey()).isNotEqualTo(light.swampedKey());
    assertThat(heavy.dryKey()).isEqualTo(light.dryKey());
  }

  private static Kit box(double mass) {
    Vector3 amidships = Vector3.of(1.2, 0, 0.1);
    return new Kit("box", mass, amidships, Optional.of(0.01), true, Optional.empty());
  }

  private static LoadedBoat pulled(LoadedBoat boat, double newtons) {
    Force force = new Force(Vector3.of(2.9, 0, 0.4), 0, newtons);
    LoadCaseStep line = LoadCaseStep.of(LoadCaseStep.Act.LINE_OUT, "cleat");
    return boat.after(Disturbance.withForces(line, boat.people(), List.of(force)));
  }

  @Test
  void a_pull_is_remembered_and_another_pull_is_another_rest() {
    BalanceCache known = new BalanceCache();
    LoadedBoat boat = trial(CRAFT, CREW).hurried(known);
    Equilibria before = pulled(boat, 60).atRest();
    assertThat(pulled(trial(CRAFT, CREW).hurried(known), 60).atRest()).isSameAs(before);
    assertAlike(pulled(boat, 90).atRest(), pulled(trial(CRAFT, CREW).hurried(), 90).atRest());
    assertAlike(boat.atRest(), trial(CRAFT, CREW).hurried().atRest());
  }

  @Test
  void water_in_a_chamber_is_another_load_whatever_chamber_and_however_much() {
    BalanceCache known = new BalanceCache();
    LoadedBoat boat = trial(CRAFT, CREW).hurried(known);
    boat.atRest();
    for (Space tank : CRAFT.spaces()) {
      for (double share : List.of(0.5, 0.4)) {
        Equilibria now = holed(boat, tank, share).atRest();
        assertAlike(now, holed(trial(CRAFT, CREW).hurried(), tank, share).atRest());
        assertThat(holed(trial(CRAFT, CREW).hurried(known), tank, share).atRest()).isSameAs(now);
      }
    }
  }

  private static LoadedBoat holed(LoadedBoat boat, Space tank, double share) {
    Pool water = new Pool(List.of(new Lift(tank.solid(), 1)), share * tank.solid().volume());
    LoadCaseStep half = LoadCaseStep.of(LoadCaseStep.Act.HALF_FULL, tank.name());
    return boat.after(Disturbance.holed(half, boat.people(), water));
  }

  @Test
  void curves_and_swings_are_those_of_the_side_the_heel_and_the_allowance_asked_about() {
    BalanceCache known = new BalanceCache();
    LoadedBoat boat = trial(CRAFT, CREW).remembering(known);
    LoadedBoat anew = trial(CRAFT, CREW);
    Allowance allowance = new Allowance(1, 1, 0.1);
    for (Side side : Side.values()) {
      assertThat(boat.rightingCurve(side)).isEqualTo(anew.rightingCurve(side));
      assertThat(boat.under(allowance).rightingCurve(side))
          .isEqualTo(anew.under(allowance).rightingCurve(side))
          .isNotEqualTo(boat.rightingCurve(side));
      assertThat(boat.swing(0.1, side)).isEqualTo(anew.swing(0.1, side));
      assertThat(boat.swing(0.05, side)).isEqualTo(anew.swing(0.05, side));
    }
    assertThat(boat.capsized()).isEqualTo(anew.capsized());
    assertThat(boat.empty(LoadCaseStep.Act.NOBODY_UNDER_IT).capsized())
        .isEqualTo(anew.empty(LoadCaseStep.Act.NOBODY_UNDER_IT).capsized());
  }
}
