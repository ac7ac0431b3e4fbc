package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Side;
import thwartwise.hull.FloodPoint;

/**
 * The righting curve against the slow one that finds the water's height anew at every trim, starts
 * each heel from the last one's trim and halves where the water comes in. {@code -Dtwo.ways=3000}
 * tries more boats.
 */
class HeelWalkTwoWaysTest {
  private static final int BOATS = Integer.getInteger("two.ways", 150);
  private static final double SAME = 1e-6;

  @Test
  void curves_of_random_boats_are_alike() {
    Random random = new Random(20261126);
    for (int i = 0; i < BOATS; i++) {
      RandomAfloat boat = RandomAfloat.loadedAsBoatsAre(random);
      Side side = i % 2 == 0 ? Side.PORT : Side.STARBOARD;
      List<FloodPoint> rail = boat.rail();
      Optional<RightingCurve> found = RightingCurve.toward(side, boat.floating(), rail);
      Optional<RightingCurve> slow = new SlowHeelWalk(side, boat.floating(), rail).curve();
      assertThat(found.isPresent()).as("boat " + i).isEqualTo(slow.isPresent());
      if (slow.isPresent()) {
        alike(found.get(), slow.get(), "boat " + i + ": " + boat);
      }
    }
  }

  private static void alike(RightingCurve found, RightingCurve slow, String which) {
    assertThat(found.points()).as(which).hasSameSizeAs(slow.points());
    assertThat(found.trimLost()).as(which).isEqualTo(slow.trimLost());
    assertThat(found.floodingAt()).as(which).isEqualTo(slow.floodingAt());
    assertThat(found.flooding().isPresent()).as(which).isEqualTo(slow.flooding().isPresent());
    for (int i = 0; i < slow.points().size(); i++) {
      alike(found.points().get(i), slow.points().get(i), which);
    }
    alike(found.last(), slow.last(), which);
  }

  private static void alike(RightingCurve.Point point, RightingCurve.Point slow, String which) {
    assertThat(point.heel()).as(which).isCloseTo(slow.heel(), within(SAME));
    assertThat(point.arm()).as(which).isCloseTo(slow.arm(), within(SAME));
    assertThat(point.plane().trim()).as(which).isCloseTo(slow.plane().trim(), within(SAME));
    assertThat(point.plane().height()).as(which).isCloseTo(slow.plane().height(), within(SAME));
  }
}
