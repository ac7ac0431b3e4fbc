package thwartwise.geometry;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SolidCutTest {

  @Test
  void every_edge_of_a_cut_solid_is_walked_both_ways() {
    Random random = new Random(6);
    Solid trough = Shapes.trough();
    assertThat(open(trough)).isEmpty();
    for (int i = 0; i < 100; i++) {
      Vector3 up =
          Vector3.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
      Span reach = trough.extent(up);
      WaterPlane plane = new WaterPlane(up, reach.from() + random.nextDouble() * reach.length());
      assertThat(open(trough.under(plane))).as("%s", plane).isEmpty();
    }
  }

  @Test
  void a_box_cut_of_a_hollow_solid_takes_just_what_lies_in_the_box() {
    Solid trough = Shapes.trough();
    // Across both walls over the slot's bottom: 1 long, two walls 0.5 x 0.2.
    Solid walls = trough.within(new Box(new Span(1, 2), Span.ALL, new Span(0.6, 0.8)));
    assertThat(walls.volume()).isCloseTo(0.2, within(1e-12));
    assertThat(walls.centroid().minus(Vector3.of(1.5, 0, 0.7)).norm()).isLessThan(1e-12);
    assertThat(open(walls)).isEmpty();
    Solid slot = trough.within(new Box(Span.ALL, new Span(-0.5, 0.5), Span.ALL));
    assertThat(slot.volume()).isCloseTo(4 * 0.4, within(1e-12));
    Solid air = trough.within(new Box(Span.ALL, new Span(-0.4, 0.4), new Span(0.5, 0.9)));
    assertThat(air.volume()).isCloseTo(0, within(1e-12));
  }

  @Test
  void cuts_that_only_touch_take_nothing_or_all() {
    Solid block = Shapes.block(2, 1, 1);
    assertThat(block.within(new Box(new Span(2, 3), Span.ALL, Span.ALL)).volume()).isZero();
    assertThat(block.within(new Box(new Span(0, 2), Span.ALL, Span.ALL)).volume())
        .isCloseTo(2, within(1e-12));
    assertThat(block.within(new Box(Span.ALL, Span.ALL, new Span(-5, 0))).volume()).isZero();
  }

  @Test
  void slices_of_a_box_add_up_to_the_whole() {
    Solid solid = Shapes.ellipsoid(2, 0.6, 0.4, 20);
    double sum = 0;
    for (int i = 0; i < 10; i++) {
      Span x = new Span(-2 + 0.4 * i, -1.6 + 0.4 * i);
      for (Span y : List.of(new Span(-1, 0.1), new Span(0.1, 1))) {
        sum += solid.within(new Box(x, y, Span.ALL)).volume();
      }
    }
    assertThat(sum).isCloseTo(solid.volume(), within(1e-11));
  }

  @Test
  void a_box_less_another_is_boxes_that_do_not_overlap() {
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      Box a = box(random);
      Box b = box(random);
      List<Box> rest = a.without(b);
      double shared = a.overlaps(b) ? a.common(b).volume() : 0;
      assertThat(rest.stream().mapToDouble(Box::volume).sum())
          .isCloseTo(a.volume() - shared, within(1e-12));
      for (int p = 0; p < rest.size(); p++) {
        assertThat(rest.get(p).overlaps(b)).isFalse();
        for (int q = p + 1; q < rest.size(); q++) {
          assertThat(rest.get(p).overlaps(rest.get(q))).isFalse();
        }
      }
    }
  }

  // Cut by one plane after another, each cap is filled before the next plane cuts it.
  @Test
  void a_box_cut_out_at_once_is_the_part_that_six_cuts_leave() {
    Random random = new Random(20261127);
    int shared = 0;
    for (Solid solid : List.of(Shapes.trough(), Shapes.ellipsoid(2, 0.6, 0.4, 12))) {
      for (int i = 0; i < 200; i++) {
        Box box = about(solid.boundingBox(), random);
        Solid part = solid.within(box);
        Solid slow = sixCuts(solid, box);
        assertThat(open(part)).as("%s", box).isEmpty();
        assertThat(part.triangleCount()).isLessThanOrEqualTo(slow.triangleCount());
        sameImmersed(part, slow, random);
        shared += part.volume() > 1e-3 ? 1 : 0;
      }
    }
    assertThat(shared).isGreaterThan(100);
  }

  @Test
  void a_box_inside_a_solid_is_twelve_triangles() {
    Solid ball = Shapes.ellipsoid(1, 1, 1, 20);
    Span middle = new Span(-0.4, 0.4);
    Solid part = ball.within(new Box(middle, new Span(-0.3, 0.5), middle));
    assertThat(part.triangleCount()).isEqualTo(12);
    assertThat(part.volume()).isCloseTo(0.8 * 0.8 * 0.8, within(1e-14));
  }

  private static void sameImmersed(Solid part, Solid slow, Random random) {
    Vector3 up =
        Vector3.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
    WaterPlane plane = new WaterPlane(up, slow.extent(up).middle());
    ImmersedPart found = new Immersion().at(plane).add(part, 1).part();
    ImmersedPart expected = new Immersion().at(plane).add(slow, 1).part();
    assertThat(part.volume()).isCloseTo(slow.volume(), within(1e-13));
    assertThat(part.moment().minus(slow.moment()).norm()).isCloseTo(0, within(1e-13));
    assertThat(found.volume()).isCloseTo(expected.volume(), within(1e-13));
    assertThat(found.area()).isCloseTo(expected.area(), within(1e-12));
  }

  private static Solid sixCuts(Solid solid, Box box) {
    return solid
        .under(new WaterPlane(Vector3.of(1, 0, 0), box.x().to()))
        .under(new WaterPlane(Vector3.of(-1, 0, 0), -box.x().from()))
        .under(new WaterPlane(Vector3.of(0, 1, 0), box.y().to()))
        .under(new WaterPlane(Vector3.of(0, -1, 0), -box.y().from()))
        .under(new WaterPlane(Vector3.of(0, 0, 1), box.z().to()))
        .under(new WaterPlane(Vector3.of(0, 0, -1), -box.z().from()));
  }

  private static Box about(Box block, Random random) {
    return new Box(about(block.x(), random), about(block.y(), random), about(block.z(), random));
  }

  private static Span about(Span along, Random random) {
    double p = along.from() + along.length() * (1.2 * random.nextDouble() - 0.1);
    double q = along.from() + along.length() * (1.2 * random.nextDouble() - 0.1);
    return new Span(Math.min(p, q), Math.max(p, q));
  }

  private static Box box(Random random) {
    return new Box(span(random), span(random), span(random));
  }

  private static Span span(Random random) {
    int from = random.nextInt(4);
    return new Span(from, from + 1 + random.nextInt(3));
  }

  /** Directed edges not walked back, with how often. */
  static Map<List<Vector3>, Integer> open(Solid solid) {
    Map<List<Vector3>, Integer> net = new HashMap<>();
    for (int i = 0; i < solid.triangleCount(); i++) {
      List<Vector3> t = solid.triangle(i);
      for (int k = 0; k < 3; k++) {
        Vector3 from = plain(t.get(k));
        Vector3 to = plain(t.get((k + 1) % 3));
        net.merge(List.of(from, to), 1, Integer::sum);
        net.merge(List.of(to, from), -1, Integer::sum);
      }
    }
    net.values().removeIf(n -> n == 0);
    return net;
  }

  // Minus nought and nought are one place.
  private static Vector3 plain(Vector3 p) {
    return Vector3.of(p.x() + 0.0, p.y() + 0.0, p.z() + 0.0);
  }
}
