package thwartwise.geometry;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WettedTrianglesTest {
  // Of a new copy of a solid every triangle is looked at, of the same one only those at vertices
  // that changed sides. A body that sinks and rises again is not looked at while it is wholly wet
  // or dry.
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
      alike(part(carried, plane, block, cut), part(new Immersion(), plane, copy(block), copy(cut)));
    }
  }

  // More solids than a thread keeps in mind, and few enough that some are found again.
  @Test
  void solids_in_any_order_give_the_same_parts_as_each_alone() {
    Random random = new Random(2);
    List<Solid> solids = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      solids.add(
          Solid.block(new Box(new Span(-1, 1), new Span(-0.6, 0.6), new Span(0, 0.5)))
              .under(WaterPlane.of(random.nextDouble(), random.nextDouble(), 0.4)));
    }
    for (int i = 0; i < 5000; i++) {
      Solid one = solids.get(random.nextInt(i % 2 == 0 ? 150 : 20));
      Solid other = solids.get(random.nextInt(150));
      WaterPlane plane = WaterPlane.of(random.nextDouble() - 0.5, 0, random.nextDouble() / 2);
      alike(
          part(new Immersion(), plane, one, other),
          part(new Immersion(), plane, copy(one), copy(other)));
    }
  }

  private static Solid copy(Solid solid) {
    return new Solid(solid.xyz, solid.corners);
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
