package thwartwise.geometry;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Vectors, spans, boxes and planes where they have nothing, one thing or too little to work on. */
class PlainShapesTest {

  @Test
  void a_point_with_one_figure_missing_is_not_finite() {
    assertThat(Vector3.of(1, 2, 3).isFinite()).isTrue();
    assertThat(Vector3.of(Double.NaN, 2, 3).isFinite()).isFalse();
    assertThat(Vector3.of(1, Double.POSITIVE_INFINITY, 3).isFinite()).isFalse();
    assertThat(Vector3.of(1, 2, Double.NaN).isFinite()).isFalse();
  }

  @Test
  void no_length_no_direction() {
    assertThatThrownBy(Vector3.ZERO::unit)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("Direction of a vector without length: Vector3[x=0.0, y=0.0, z=0.0]");
    assertThatThrownBy(Vector3.of(Double.NaN, 0, 0)::unit)
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_quarter_of_the_way_is_a_quarter_of_each_step() {
    assertThat(Vector3.of(1, 2, 3).toward(Vector3.of(5, 10, -1), 0.25))
        .isEqualTo(Vector3.of(2, 4, 2));
  }

  @Test
  void no_volume_no_centre() {
    assertThatThrownBy(Solid.EMPTY::centroid)
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("Centre of a solid without volume");
    assertThat(Solid.EMPTY.extent(Vector3.of(0, 0, 1))).isEqualTo(new Span(0, 0));
  }

  @Test
  void a_span_in_the_mirror_runs_from_its_other_end() {
    assertThat(new Span(-1, 3).mirrored()).isEqualTo(new Span(-3, 1));
    assertThat(new Span(1, 3).mirrored()).isEqualTo(new Span(-3, -1));
    assertThat(Span.ALL.mirrored()).isEqualTo(Span.ALL);
  }

  @Test
  void a_span_that_runs_backward_or_nowhere_is_refused() {
    assertThatThrownBy(() -> new Span(2, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("A span runs from the lesser to the greater: 2.0 to 1.0");
    assertThatThrownBy(() -> new Span(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  private static Box box(double x, double xTo, double y, double yTo, double z, double zTo) {
    return new Box(new Span(x, xTo), new Span(y, yTo), new Span(z, zTo));
  }

  // Sharing a face leaves no sheet without thickness behind.
  @Test
  void a_box_cut_flush_leaves_only_pieces_with_volume() {
    Box whole = box(0, 3, 0, 3, 0, 3);
    assertThat(whole.without(whole)).isEmpty();
    assertThat(whole.without(box(0, 3, 0, 3, 0, 1))).containsExactly(box(0, 3, 0, 3, 1, 3));
    assertThat(whole.without(box(1, 3, 0, 3, 0, 3))).containsExactly(box(0, 1, 0, 3, 0, 3));
    assertThat(whole.without(box(0, 3, 0, 2, 0, 3))).containsExactly(box(0, 3, 2, 3, 0, 3));
    assertThat(whole.without(box(3, 4, 0, 3, 0, 3))).containsExactly(whole);
    assertThat(whole.without(box(1, 2, 1, 2, 1, 2)))
        .hasSize(6)
        .allMatch(piece -> piece.volume() > 0);
  }

  @Test
  void no_turn_changes_nothing() {
    WaterPlane plane = WaterPlane.of(0.3, -0.2, 1);
    assertThat(plane.turned(0, 0)).isEqualTo(plane.up());
  }

  // Turning is about the boat's own level lines: at the bow's height up to a sign, so a turn in
  // heel alone leaves trim as it is to first order, and a turn in trim alone leaves heel exactly.
  @Test
  void a_small_turn_is_the_difference_of_heel_and_trim() {
    WaterPlane plane = WaterPlane.of(0.3, -0.2, 1);
    Vector3 up = plane.turned(0, 0.01);
    WaterPlane trimmed = new WaterPlane(up, 1);
    assertThat(trimmed.heel()).isCloseTo(0.3, within(1e-12));
    assertThat(trimmed.trim()).isCloseTo(-0.19, within(1e-12));
    WaterPlane heeled = new WaterPlane(WaterPlane.of(0.3, 0, 1).turned(0.01, 0), 1);
    assertThat(heeled.heel()).isCloseTo(0.31, within(1e-12));
    assertThat(heeled.trim()).isCloseTo(0, within(1e-12));
  }

  @Test
  void standing_on_end_a_boat_has_no_heel() {
    assertThat(WaterPlane.of(0.7, Math.PI / 2, 0).heel()).isZero();
    assertThat(WaterPlane.of(0.7, 1.5, 0).heel()).isCloseTo(0.7, within(1e-12));
  }

  @Test
  void wholly_under_water_nothing_answers_a_turn() {
    ImmersedPart sunk = ImmersedPart.of(Shapes.block(1, 1, 1), WaterPlane.of(0.1, 0.2, 9));
    assertThat(List.of(sunk.transverseInertia(), sunk.longitudinalInertia())).containsOnly(0.0);
    assertThat(sunk.productInertia()).isZero();
  }
}
