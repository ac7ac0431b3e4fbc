package thwartwise.hull;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.hull.Hulls.p;
import static thwartwise.hull.Hulls.station;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.hull.PanelTwist.PanelSide;

class PanelTwistTest {

  // The side leans out by 30 degrees at the fore end, about a middle that stays 0.6 out and 0.25
  // up: 30 degrees over 2 m.
  @Test
  void a_side_that_leans_out_is_twisted_by_that_angle_over_the_distance() {
    double lean = Math.toRadians(30);
    double out = 0.25 * Math.sin(lean);
    double up = 0.25 * Math.cos(lean);
    PanelTwist twist =
        greatest(
            station("aft", p(0, 0, 0), p(0, 0.6, 0), p(0, 0.6, 0.5)),
            station("middle", p(1, 0, 0), p(1, 0.6, 0), p(1, 0.6, 0.5)),
            station("fore", p(3, 0, 0), p(3, 0.6 - out, 0.25 - up), p(3, 0.6 + out, 0.25 + up)));
    assertThat(twist.perMetre()).isCloseTo(lean / 2, within(1e-12));
    assertThat(twist)
        .isEqualTo(new PanelTwist(twist.perMetre(), 1, 3, PanelSide.EITHER, "middle", "fore"));
  }

  // A side that closes in and lifts, measured at other slants: bent and raked, not twisted.
  @Test
  void neither_bend_nor_rake_is_a_twist() {
    PanelTwist twist =
        greatest(
            station("aft", p(0, 0, 0), p(0, 0.6, 0), p(-0.2, 0.6, 0.5)),
            station("middle", p(1.5, 0, 0), p(1.5, 0.6, 0), p(1.5, 0.6, 0.5)),
            station("fore", p(3, 0, 0), p(3, 0.4, 0), p(3, 0.4, 0.5)));
    assertThat(twist.perMetre()).isCloseTo(0, within(1e-12));
  }

  @Test
  void the_side_is_named_when_the_sides_differ() {
    List<Station> stations =
        List.of(
            station("aft", p(0, 0, 0), p(0, 0.6, 0), p(0, 0.6, 0.5)),
            new Station(
                "middle",
                List.of(p(1, 0, 0), p(1, 0.6, 0), p(1, 0.6, 0.5)),
                List.of(p(1, 0, 0), p(1, -0.6, 0), p(1, -0.3, 0.5))),
            station("fore", p(3, 0, 0), p(3, 0.6, 0), p(3, 0.6, 0.5)));
    PanelTwist twist = PanelTwist.greatest(stations).orElseThrow();
    assertThat(twist.line()).isEqualTo(1);
    assertThat(twist.side()).isEqualTo(PanelSide.STARBOARD);
  }

  @Test
  void strips_narrower_than_a_hand_are_left_out() {
    assertThat(
            PanelTwist.greatest(
                List.of(
                    station("aft", p(0, 0, 0), p(0, 0.09, 0)),
                    station("middle", p(1, 0, 0), p(1, 0, 0.5)),
                    station("fore", p(2, 0, 0), p(2, 0.09, 0)))))
        .isEmpty();
  }

  private static PanelTwist greatest(Station... stations) {
    return PanelTwist.greatest(List.of(stations)).orElseThrow();
  }
}
