package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** How a swamped boat ends up, in one word, by moments on paper. */
class SwampedPosesTest {

  private static Equilibria swamped(BoxBoat boat) {
    Loading loading = new Loading(boat.model(), List.of(), List.of(), 1);
    return Equilibrium.from(Swamping.of(loading, 1).floating(List.of()));
  }

  // On paper: box 3 x 1.2 x 0.5, one tank over the foremost metre, 588 l, and 200 kg whose centre
  // stands at x = 0.5. All lift lies at x = 2 or further forward, all weight at 0.5: level, 200 kg
  // of lift at x >= 2 with the weight 1.5 m behind it gives a moment of 300 kg m that lifts the bow
  // and nothing aft that answers. It turns until the weight hangs under the tank, stern down.
  @Test
  void with_only_a_bow_chamber_and_a_heavy_stern_it_hangs_bow_up() {
    Equilibria found =
        swamped(
            BoxBoat.of(3, 1.2, 0.5)
                .hull(200, Vector3.of(0.5, 0, 0.2))
                .weightlessShell()
                .proven("bow tank", new Span(2, 3)));
    assertThat(found.exist()).isTrue();
    for (Pose pose : found.reached()) {
      assertThat(pose.word()).isEqualTo("bow up");
      assertThat(pose.trim()).as("bow down is positive").isNegative();
      assertThat(Math.toDegrees(pose.trim())).isLessThan(-45);
      assertThat(pose.stable()).isTrue();
      // Weight and lift stand over one another.
      Vector3 apart = pose.part().centroid().minus(Vector3.of(0.5, 0, 0.2));
      assertThat(apart.dot(pose.plane().ahead())).isCloseTo(0, within(1e-6));
      assertThat(pose.above(Vector3.of(3, 0, 0.5))).as("stem above water").isPositive();
    }
  }

  @Test
  void the_same_with_everything_aft_and_forward_exchanged_hangs_stern_up() {
    Equilibria found =
        swamped(
            BoxBoat.of(3, 1.2, 0.5)
                .hull(200, Vector3.of(2.5, 0, 0.2))
                .weightlessShell()
                .proven("stern tank", new Span(0, 1)));
    assertThat(found.reached()).extracting(Pose::word).containsOnly("stern up");
    assertThat(found.reached()).allMatch(p -> Math.toDegrees(p.trim()) > 45);
  }

  // All lift on the port side, half a metre from the weight on the middle line: nothing answers on
  // starboard, which goes down (heel positive) until the weight hangs under the tank.
  @Test
  void with_all_its_buoyancy_on_one_side_it_rolls_over() {
    Equilibria found =
        swamped(
            BoxBoat.of(3, 1.2, 0.5)
                .hull(150, 0.25)
                .weightlessShell()
                .proven("port tank", Span.ALL, new Span(0.4, 0.6), Span.ALL));
    assertThat(found.exist()).isTrue();
    for (Pose pose : found.reached()) {
      assertThat(pose.word()).isEqualTo("on its side");
      assertThat(pose.heel()).as("starboard down is positive").isPositive();
    }
  }

  // A keel tank 3 x 0.2 x 0.1 of 60 l under 55 kg whose centre stands at 0.5: level, BM is
  // 3 x 0.2^3/12 / 0.055 = 0.036 m and G stands 0.45 m over B. It turns until the weight hangs.
  @Test
  void low_narrow_buoyancy_under_a_high_weight_turns_upside_down() {
    Equilibria found =
        swamped(
            BoxBoat.of(3, 1.2, 0.6)
                .hull(55, 0.5)
                .weightlessShell()
                .proven("keel", Span.ALL, new Span(-0.1, 0.1), new Span(0, 0.1)));
    assertThat(found.exist()).isTrue();
    assertThat(found.reached()).extracting(Pose::word).containsOnly("upside down");
  }

  @Test
  void with_too_little_that_lifts_it_sinks() {
    Equilibria found =
        swamped(
            BoxBoat.of(3, 1.2, 0.5)
                .hull(200, 0.2)
                .weightlessShell()
                .proven("small tank", new Span(2.7, 3)));
    assertThat(found.exist()).isFalse();
    assertThat(found.ending()).isEqualTo(Equilibria.Ending.SINKS);
  }
}
