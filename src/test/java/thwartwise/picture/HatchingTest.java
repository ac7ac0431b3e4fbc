package thwartwise.picture;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class HatchingTest {
  // A U: both legs 20 broad, 60 high, a gap of 20 between them above y = 40.
  private static final List<Point> U =
      List.of(
          new Point(0, 0),
          new Point(20, 0),
          new Point(20, 40),
          new Point(40, 40),
          new Point(40, 0),
          new Point(60, 0),
          new Point(60, 60),
          new Point(0, 60));

  @Test
  void strokes_stop_where_the_area_does_and_go_on_behind_a_gap() {
    List<List<Point>> strokes = Hatching.COUNTS.strokes(U);
    assertThat(strokes).hasSizeGreaterThan(15);
    assertThat(strokes)
        .allSatisfy(
            stroke -> {
              Point middle =
                  new Point(
                      (stroke.get(0).x() + stroke.get(1).x()) / 2,
                      (stroke.get(0).y() + stroke.get(1).y()) / 2);
              assertThat(middle.y() > 40 || middle.x() < 20 || middle.x() > 40).isTrue();
            });
  }

  @Test
  void upright_strokes_are_as_long_as_the_area_is_high() {
    List<Point> block =
        List.of(new Point(0, 0), new Point(40, 0), new Point(40, 30), new Point(0, 30));
    assertThat(Hatching.OPEN.strokes(block))
        .hasSize(4)
        .allMatch(s -> s.get(1).y() - s.get(0).y() == 30 && s.get(0).x() == s.get(1).x());
  }

  @Test
  void nothing_has_no_strokes() {
    assertThat(Hatching.CLAIMED.strokes(List.of())).isEmpty();
  }
}
