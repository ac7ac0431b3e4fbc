package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;

class DisjointBoxesTest {
  private static Box cube(double x) {
    return new Box(new Span(x, x + 1), new Span(0, 1), new Span(0, 1));
  }

  private static double volume(List<Box> boxes) {
    return boxes.stream().mapToDouble(Box::volume).sum();
  }

  @Test
  void boxes_that_stand_apart_or_touch_are_whole() {
    DisjointBoxes free = new DisjointBoxes();
    assertThat(free.place(cube(0))).containsExactly(cube(0));
    assertThat(free.place(cube(1))).containsExactly(cube(1));
    assertThat(free.place(cube(5))).containsExactly(cube(5));
  }

  @Test
  void a_box_keeps_only_what_those_before_it_left() {
    DisjointBoxes free = new DisjointBoxes();
    free.place(cube(0));
    free.place(cube(0.75));
    assertThat(volume(free.place(cube(0.5)))).isCloseTo(0, within(1e-12));
    assertThat(volume(free.place(cube(1.5)))).isCloseTo(0.75, within(1e-12));
  }

  @Test
  void the_same_box_twice_is_there_once() {
    DisjointBoxes free = new DisjointBoxes();
    free.place(cube(0));
    assertThat(free.place(cube(0))).isEmpty();
  }

  // A post through the middle of a cube, both ways round: 1 + 3 x 0.04 - 0.04.
  @Test
  void a_post_through_a_cube_counts_outside_it_only() {
    Box post = new Box(new Span(0.4, 0.6), new Span(0.4, 0.6), new Span(-1, 2));
    DisjointBoxes cubeFirst = new DisjointBoxes();
    assertThat(volume(cubeFirst.place(cube(0))) + volume(cubeFirst.place(post)))
        .isCloseTo(1.08, within(1e-12));
    DisjointBoxes postFirst = new DisjointBoxes();
    assertThat(volume(postFirst.place(post)) + volume(postFirst.place(cube(0))))
        .isCloseTo(1.08, within(1e-12));
  }
}
