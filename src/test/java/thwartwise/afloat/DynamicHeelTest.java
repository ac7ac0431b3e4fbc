package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Side;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.hull.FloodPoint;

class DynamicHeelTest {
  private static final Solid HULL = Blocks.block(4, 1.4, 0.7);
  private static final FloodPoint RAIL = new FloodPoint("rail", Vector3.of(0, -0.7, 0.7));

  private static FloatingBody boat(double mass, double y, double z) {
    return new FloatingBody(mass, Vector3.of(0, y, z), List.of(new Lift(HULL, 1)), 1000);
  }

  @Test
  void nothing_moved_swings_nowhere() {
    DynamicHeel swing =
        DynamicHeel.of(boat(1300, 0, 0.35), 0, Side.STARBOARD, List.of(RAIL)).orElseThrow();
    // It turns back within the degree's last digits it is looked for.
    assertThat(swing.heel().orElseThrow()).isCloseTo(0, within(1e-6));
    assertThat(swing.flooding().orElseThrow()).isPositive();
    assertThat(swing.floodingAt()).isEqualTo("rail");
  }

  @Test
  void a_weight_moved_the_other_way_brings_the_boat_back_from_this_side() {
    DynamicHeel swing =
        DynamicHeel.of(boat(1300, 0.1, 0.35), 0.02, Side.STARBOARD, List.of(RAIL)).orElseThrow();
    assertThat(swing.heel().orElseThrow()).isEqualTo(0.02);
  }

  @Test
  void an_edge_already_under_floods_at_once() {
    FloodPoint hole = new FloodPoint("hole", Vector3.of(0, 0, 0.1));
    DynamicHeel swing =
        DynamicHeel.of(boat(1300, -0.02, 0.35), 0.01, Side.STARBOARD, List.of(RAIL, hole))
            .orElseThrow();
    assertThat(swing.heel()).isEmpty();
    assertThat(swing.flooding().orElseThrow()).isEqualTo(0.01);
    assertThat(swing.floodingAt()).isEqualTo("hole");
  }

  // An opening the boat reaches only beyond where it turns back does not flood; one a little lower
  // does. By the row SW-port it turns at 14.2268 degrees: an edge 0.7 out goes in there at draft +
  // 0.7 tan.
  @Test
  void an_edge_just_beyond_the_turning_point_stays_dry_and_one_just_short_floods() {
    double turns = Math.toRadians(14.2268018343);
    double reached = 1.3 / 5.6 + 0.7 * Math.tan(turns);
    FloodPoint dry = new FloodPoint("notch", Vector3.of(0, -0.7, reached + 1e-5));
    FloodPoint wet = new FloodPoint("notch", Vector3.of(0, -0.7, reached - 1e-5));
    FloatingBody boat = boat(1300, -0.06, 0.35);
    DynamicHeel stays = DynamicHeel.of(boat, 0, Side.STARBOARD, List.of(dry)).orElseThrow();
    assertThat(stays.heel().orElseThrow()).isCloseTo(turns, within(1e-6));
    DynamicHeel floods = DynamicHeel.of(boat, 0, Side.STARBOARD, List.of(wet)).orElseThrow();
    assertThat(floods.heel()).isEmpty();
    assertThat(floods.flooding().orElseThrow()).isBetween(turns - 5e-5, turns);
    assertThat(floods.floodingAt()).isEqualTo("notch");
  }

  // G high and far out: it goes over, and with no edge named there is nothing to flood.
  @Test
  void a_boat_that_never_turns_back_has_neither_angle() {
    DynamicHeel swing =
        DynamicHeel.of(boat(1300, -0.3, 0.9), 0, Side.STARBOARD, List.of()).orElseThrow();
    assertThat(swing.heel()).isEmpty();
    assertThat(swing.flooding()).isEmpty();
    assertThat(swing.floodingAt()).isEmpty();
  }

  @Test
  void both_sides_are_alike() {
    DynamicHeel starboard =
        DynamicHeel.of(boat(1300, -0.05, 0.35), 0, Side.STARBOARD, List.of()).orElseThrow();
    DynamicHeel port =
        DynamicHeel.of(boat(1300, 0.05, 0.35), 0, Side.PORT, List.of()).orElseThrow();
    assertThat(port.heel().orElseThrow()).isCloseTo(starboard.heel().orElseThrow(), within(1e-6));
  }

  @Test
  void a_boat_that_sinks_does_not_swing() {
    assertThat(DynamicHeel.of(boat(4000, -0.05, 0.35), 0, Side.STARBOARD, List.of()))
        .isEqualTo(Optional.empty());
  }

  // Work on the way is the area under the arms, and the curve keeps that as a difference too.
  @Test
  void what_is_left_when_it_floods_is_the_work_from_the_move_to_there() {
    for (double out : new double[] {-0.01, -0.12}) {
      FloatingBody moved = boat(1100, out, 0.35);
      DynamicHeel swing = DynamicHeel.of(moved, 0, Side.STARBOARD, List.of(RAIL)).orElseThrow();
      RightingCurve curve =
          RightingCurve.toward(Side.STARBOARD, moved, List.of(RAIL)).orElseThrow();
      double rise = curve.flooding().orElseThrow().energy() - curve.points().get(0).energy();
      double work = 1100 * Gravity.STANDARD * rise;
      assertThat(swing.spare().orElseThrow()).isCloseTo(work, within(1e-3 * Math.abs(work)));
      assertThat(swing.heel().isPresent()).isEqualTo(work > 0);
    }
  }

  // From a boat that hardly moves to one that goes over, with an edge from low to high.
  @Test
  void asked_only_whether_it_turns_back_in_time_it_answers_as_the_whole_search_does() {
    int turned = 0;
    int flooded = 0;
    for (double y = -0.12; y <= 0.02; y += 0.013) {
      for (double edge = 0.25; edge <= 0.7; edge += 0.05) {
        List<FloodPoint> edges = List.of(new FloodPoint("edge", Vector3.of(0, -0.7, edge)), RAIL);
        FloatingBody boat = boat(1300, y, 0.45);
        DynamicHeel whole = DynamicHeel.of(boat, 0, Side.STARBOARD, edges).orElseThrow();
        DynamicHeel nearly = DynamicHeel.nearly(boat, 0, Side.STARBOARD, edges).orElseThrow();
        assertThat(nearly.heel().isPresent()).isEqualTo(whole.heel().isPresent());
        turned += whole.heel().isPresent() ? 1 : 0;
        flooded += whole.heel().isPresent() ? 0 : 1;
      }
    }
    assertThat(turned).isGreaterThan(10);
    assertThat(flooded).isGreaterThan(10);
  }
}
