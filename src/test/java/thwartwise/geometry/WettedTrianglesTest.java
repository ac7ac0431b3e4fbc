package thwartwise.geometry;

import static thwartwise.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class WettedTrianglesTest {
  // With an immersion for each plane every triangle is looked at, with one for all of them only
  // those at vertices that changed sides. A body that sinks and rises again is not looked at while
  // it is wholly wet or dry.
  @Test
  void a_plane_after_others_gives_the_same_part_as_the_plane_alone() {
    Solid block = Solid.block(new Box(new Span(-1, 3), new Span(-0.6, 0.6), new Span(0, 0.5)));
    Solid cut = block.under(WaterPlane.of(0.3, 0.1, 0.4)).under(WaterPlane.of(-0.5, -0.1, 0.4));
    Immersion carried = new Immersion();
    Random random = new Random(1);
    for (int i = 0; i < 2000; i++) {
      boolean far = i % 10 == 0;
      WaterPlane plane =
          WaterPlane.of(
              far ? 6 * random.nextDouble() - 3 : 0.3 * random.nextDouble(),
              0.2 * random.nextDouble() - 0.1,
              0.9 * random.nextDouble() - 0.2);
      alike(part(carried, plane, block, cut), part(new Immersion(), plane, block, cut));
    }
  }

  private static ImmersedPart part(Immersion immersion, WaterPlane plane, Solid one, Solid other) {
    return immersion.at(plane).add(one, 1).add(other, -0.3).part();
  }

  private static void alike(ImmersedPart carried, ImmersedPart alone) {
    assertThat(carried.volume()).isEqualTo(alone.volume());
    assertThat(carried.momentU()).isEqualTo(alone.momentU());
    assertThat(carried.momentV()).isEqualTo(alone.momentV());
    assertThat(carried.momentS()).isEqualTo(alone.momentS());
    assertThat(carried.area()).isEqualTo(alone.area());
    assertThat(carried.areaUU()).isEqualTo(alone.areaUU());
    assertThat(carried.areaVV()).isEqualTo(alone.areaVV());
  }
}
