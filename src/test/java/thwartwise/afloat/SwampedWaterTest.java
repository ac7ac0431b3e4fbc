package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.geometry.Span;

/** A swamped box of 3 by 1.2 m on two tanks of 0.7 m: 1.92 m² of it fill to the sea's level. */
class SwampedWaterTest {
  private static final BoxBoat BOAT =
      BoxBoat.of(3, 1.2, 0.5)
          .hull(300, 0.2)
          .weightlessShell()
          .proven("stern tank", new Span(0, 0.7))
          .proven("bow tank", new Span(2.3, 3));
  private static final Loading EMPTY = new Loading(BOAT.model(), List.of(), List.of(), 1);
  private static final Pose POSE =
      Equilibrium.from(Swamping.of(EMPTY, 1).floating(List.of())).worst().orElseThrow();

  // 300 kg on 1.68 m² of tanks.
  @Test
  void the_water_inside_stands_as_high_as_the_sea() {
    double draft = 300.0 / 1680;
    assertThat(LooseWater.filledVolume(LooseWater.of(EMPTY), Bay.WHOLE, POSE))
        .isCloseTo(1.92 * draft, within(1e-5));
  }

  @Test
  void a_bay_holds_its_own_share_of_it() {
    Bay half = new Bay("half", new thwartwise.geometry.Box(new Span(0.7, 1.5), Span.ALL, Span.ALL));
    assertThat(LooseWater.filledVolume(LooseWater.of(EMPTY), half, POSE))
        .isCloseTo(0.96 * 300.0 / 1680, within(1e-5));
  }
}
