package thwartwise.geometry;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The volume in a box against the volume of the part cut out. */
class VolumeInBoxTest {
  private static final int BOXES = 400;

  static Stream<Solid> solids() {
    return Stream.of(
        Shapes.trough(),
        Shapes.ellipsoid(2, 0.6, 0.4, 12),
        Shapes.trough().under(WaterPlane.of(0.3, 0.1, 0.6)),
        Shapes.moved(Shapes.trough(), Vector3.of(30, -7, 2)));
  }

  @ParameterizedTest
  @MethodSource("solids")
  void a_box_anywhere_holds_what_a_cut_of_the_solid_holds(Solid solid) {
    Random random = new Random(20261127);
    Box about = solid.boundingBox();
    int shared = 0;
    for (int i = 0; i < BOXES; i++) {
      Box box =
          new Box(
              anywhere(about.x(), random),
              anywhere(about.y(), random),
              anywhere(about.z(), random));
      shared += agrees(solid, box) > 1e-3 ? 1 : 0;
    }
    assertThat(shared).isGreaterThan(BOXES / 4);
  }

  // Faces of the box lie in faces of the trough and pass through its corners.
  @Test
  void a_box_whose_faces_lie_in_those_of_the_solid_holds_what_a_cut_holds() {
    Solid trough = Shapes.trough();
    Random random = new Random(20261128);
    double[] x = {-1, 0, 2, 4, 5};
    double[] y = {-2, -1, -0.5, 0.5, 1, 2};
    double[] z = {-1, 0, 0.4, 1, 2};
    int shared = 0;
    for (int i = 0; i < BOXES; i++) {
      Box box = new Box(between(x, random), between(y, random), between(z, random));
      shared += agrees(trough, box) > 1e-3 ? 1 : 0;
    }
    assertThat(shared).isGreaterThan(BOXES / 4);
  }

  @Test
  void a_box_about_the_solid_holds_all_of_it_and_one_inside_is_full() {
    Solid trough = Shapes.trough();
    Span wide = new Span(-10, 10);
    assertThat(trough.volumeWithin(new Box(wide, wide, wide))).isCloseTo(5.6, within(1e-12));
    Box inFloor = new Box(new Span(1, 2), new Span(-0.5, 0.5), new Span(0.1, 0.3));
    assertThat(trough.volumeWithin(inFloor)).isCloseTo(0.2, within(1e-15));
    Box inSlot = new Box(new Span(1, 2), new Span(-0.4, 0.4), new Span(0.5, 2));
    assertThat(trough.volumeWithin(inSlot)).isZero();
    assertThat(Solid.EMPTY.volumeWithin(inFloor)).isZero();
  }

  private static double agrees(Solid solid, Box box) {
    double volume = solid.volumeWithin(box);
    assertThat(volume).as("%s", box).isCloseTo(solid.within(box).volume(), within(2e-13));
    return volume;
  }

  /** Up to a quarter of the length beyond either end. */
  private static Span anywhere(Span along, Random random) {
    double from = along.from() - 0.25 * along.length();
    double p = from + 1.5 * along.length() * random.nextDouble();
    double q = from + 1.5 * along.length() * random.nextDouble();
    return new Span(Math.min(p, q), Math.max(p, q));
  }

  private static Span between(double[] places, Random random) {
    int from = random.nextInt(places.length - 1);
    int to = from + 1 + random.nextInt(places.length - 1 - from);
    return new Span(places[from], places[to]);
  }
}
