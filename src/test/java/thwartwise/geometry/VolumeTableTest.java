package thwartwise.geometry;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Solid.VolumeTable;

class VolumeTableTest {

  @Test
  void a_block_fills_evenly_from_its_bottom_to_its_top() {
    Box box = new Box(new Span(0, 2), new Span(-1, 1), new Span(0.5, 1.5));
    VolumeTable table = VolumeTable.of(Solid.block(box));
    assertThat(table.under(0.4)).isZero();
    assertThat(table.under(0.5)).isZero();
    assertThat(table.under(0.75)).isCloseTo(1, within(1e-12));
    assertThat(table.under(1.5)).isCloseTo(4, within(1e-12));
    assertThat(table.under(9)).isCloseTo(4, within(1e-12));
  }

  // A cone with its tip down, radius as height: pi h3 / 3. Between two heights of 24 the straight
  // line is off by at most V'' s2 / 8 = 2 pi h s2 / 8.
  @Test
  void a_cone_is_followed_as_near_as_straight_lines_between_its_heights_allow() {
    Solid cone = cone(400);
    VolumeTable table = VolumeTable.of(cone);
    double step = 1.0 / 24;
    for (double h = 0.01; h < 1; h += 0.01) {
      double exact = cone.volume() * h * h * h;
      assertThat(table.under(h))
          .isCloseTo(exact, within(2 * Math.PI * (h + step) * step * step / 8));
    }
  }

  private static Solid cone(int sides) {
    List<Vector3> vertices = new ArrayList<>(List.of(Vector3.ZERO, Vector3.of(0, 0, 1)));
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * i / sides;
      vertices.add(Vector3.of(Math.cos(angle), Math.sin(angle), 1));
      int here = i + 2;
      int next = (i + 1) % sides + 2;
      triangles.add(new int[] {0, next, here});
      triangles.add(new int[] {1, here, next});
    }
    return Solid.of(vertices, triangles);
  }
}
