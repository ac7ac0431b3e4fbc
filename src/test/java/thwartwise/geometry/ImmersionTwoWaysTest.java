package thwartwise.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Immersed parts against the slow sum that goes through every triangle by itself: blocks, which
 * have a closed form where the water cuts their upright edges only, and solids of so many triangles
 * that runs of them are taken up whole.
 */
class ImmersionTwoWaysTest {
  /** Of figures of about one; both ways sum to a few units of the last place. */
  private static final double NUMERIC = 1e-12;

  private static final int PLANES = 2000;

  @Test
  void a_block_is_immersed_as_its_triangles_are_however_the_water_cuts_it() {
    Random random = new Random(20261127);
    int closedForm = 0;
    for (int i = 0; i < PLANES; i++) {
      Solid block = Solid.block(new Box(span(random), span(random), span(random)));
      WaterPlane plane = plane(random, i % 2 == 0 ? 0.4 : Math.PI);
      sameBothWays(block, plane);
      closedForm +=
          new BlockSums().add(block.bounds(), plane, plane.ahead(), plane.athwart(), 1) ? 1 : 0;
    }
    assertThat(closedForm).isBetween(PLANES / 20, PLANES * 19 / 20);
  }

  @Test
  void a_block_under_level_water_is_its_foot_times_its_depth() {
    Solid block = Solid.block(new Box(new Span(1, 3), new Span(-0.5, 1), new Span(0.2, 0.8)));
    ImmersedPart part = ImmersedPart.of(block, WaterPlane.of(0, 0, 0.6));
    // By hand: 2 m by 1.5 m by 0.4 m, its middle at (2, 0.25, 0.4); second moment l b³/12.
    assertThat(part.volume()).isCloseTo(1.2, within(NUMERIC));
    assertThat(part.centroid().minus(Vector3.of(2, 0.25, 0.4)).norm()).isLessThan(NUMERIC);
    assertThat(part.area()).isCloseTo(3, within(NUMERIC));
    assertThat(part.transverseInertia()).isCloseTo(2 * 3.375 / 12, within(NUMERIC));
    assertThat(part.longitudinalInertia()).isCloseTo(1.5 * 8 / 12, within(NUMERIC));
    assertThat(part.productInertia()).isCloseTo(0, within(NUMERIC));
  }

  @Test
  void a_solid_of_many_triangles_is_immersed_as_they_are_one_by_one() {
    Solid egg = Shapes.ellipsoid(0.9, 0.5, 0.3, 24);
    assertThat(egg.facets().runs).isNotEmpty();
    Random random = new Random(20261127);
    for (int i = 0; i < PLANES / 4; i++) {
      sameBothWays(egg, plane(random, Math.PI));
    }
  }

  // The lid makes runs of its own, the sides others: where rounding alone decides whether they are
  // wet or dry, the lid must not be closed twice.
  @Test
  void a_lid_in_the_plane_of_the_water_is_closed_once() {
    Solid drum = drum(200);
    assertThat(drum.facets().runs).isNotEmpty();
    Random random = new Random(20261127);
    for (int i = 0; i < PLANES; i++) {
      double tilt = 1e-15 * (random.nextDouble() - 0.5);
      double off = 4e-16 * (random.nextDouble() - 0.5);
      WaterPlane plane = new WaterPlane(Vector3.of(tilt, tilt / 3, 1), 0.5 + off);
      double volume = ImmersedPart.of(drum, plane).volume();
      assertThat(volume).as("%s", plane).isCloseTo(drum.volume(), within(1e-9));
    }
  }

  /** Upright about z, half a metre high, half a metre in radius. */
  private static Solid drum(int sides) {
    SolidBuilder builder = new SolidBuilder();
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * i / sides;
      for (double z : new double[] {0, 0.5}) {
        builder.vertex(Vector3.of(Math.cos(angle) / 2, Math.sin(angle) / 2, z));
      }
    }
    IntStream.range(0, sides)
        .forEach(
            i -> {
              int next = (i + 1) % sides;
              builder.triangle(2 * i, 2 * next, 2 * next + 1);
              builder.triangle(2 * i, 2 * next + 1, 2 * i + 1);
              if (i > 0 && next > 0) {
                builder.triangle(0, 2 * next, 2 * i);
                builder.triangle(1, 2 * i + 1, 2 * next + 1);
              }
            });
    return builder.build();
  }

  private static void sameBothWays(Solid solid, WaterPlane plane) {
    ImmersedPart found = ImmersedPart.of(solid, plane);
    ImmersedPart slow = new SlowImmersion().at(plane).add(solid, 1).part();
    String which = solid.boundingBox() + " under " + plane;
    double[] figures = figures(found);
    for (int i = 0; i < figures.length; i++) {
      assertThat(figures[i]).as(which).isCloseTo(figures(slow)[i], within(NUMERIC));
    }
  }

  private static double[] figures(ImmersedPart p) {
    return new double[] {
      p.volume(),
      p.momentU(),
      p.momentV(),
      p.momentS(),
      p.area(),
      p.areaU(),
      p.areaV(),
      p.areaUU(),
      p.areaUV(),
      p.areaVV()
    };
  }

  private static Span span(Random random) {
    double from = random.nextDouble() - 0.8;
    return new Span(from, from + 0.1 + random.nextDouble());
  }

  private static WaterPlane plane(Random random, double most) {
    return WaterPlane.of(
        most * (2 * random.nextDouble() - 1),
        most / 2 * (2 * random.nextDouble() - 1),
        0.4 * (2 * random.nextDouble() - 1));
  }
}
