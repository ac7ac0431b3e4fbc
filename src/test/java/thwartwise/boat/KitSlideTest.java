package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** Loose kit in a box 1.2 m broad whose shell takes no room. */
class KitSlideTest {
  private static BoxBoat box() {
    return BoxBoat.of(3, 1.2, 0.5).hull(100, 0.2).weightlessShell();
  }

  private static Kit bag(double x, double y, double z, Optional<Double> volume) {
    return new Kit("bag", 10, Vector3.of(x, y, z), volume, false, Optional.empty());
  }

  private static double slid(BoxBoat boat, Kit kit, double side) {
    return boat.model().slid(kit, side).y();
  }

  @Test
  void it_slides_to_the_side() {
    Kit bag = bag(1.5, 0.1, 0.1, Optional.empty());
    assertThat(slid(box(), bag, 1)).isCloseTo(0.6, within(1e-5));
    assertThat(slid(box(), bag, -1)).isCloseTo(-0.6, within(1e-5));
    assertThat(box().model().slid(bag, 1).z()).isEqualTo(0.1);
    assertThat(box().model().slid(bag, 1).x()).isEqualTo(1.5);
  }

  // A cube of 8 litres is 0.2 m across.
  @Test
  void a_cube_stops_with_its_face_at_the_side() {
    assertThat(slid(box(), bag(1.5, 0, 0.1, Optional.of(0.008)), 1)).isCloseTo(0.5, within(1e-5));
  }

  @Test
  void a_chamber_stops_it_and_a_chamber_on_the_other_side_does_not() {
    BoxBoat boat = box().proven("side tank", Span.ALL, new Span(0.4, 0.6), new Span(0, 0.3));
    Kit bag = bag(1.5, 0, 0.1, Optional.empty());
    assertThat(slid(boat, bag, 1)).isCloseTo(0.4, within(1e-5));
    assertThat(slid(boat, bag, -1)).isCloseTo(-0.6, within(1e-5));
  }

  // Its foot may lie on the chamber's top.
  @Test
  void a_chamber_below_it_stops_nothing() {
    BoxBoat boat = box().proven("side tank", Span.ALL, new Span(0.4, 0.6), new Span(0, 0.1));
    assertThat(slid(boat, bag(1.5, 0, 0.2, Optional.empty()), 1)).isCloseTo(0.6, within(1e-5));
  }

  @Test
  void kit_outside_the_hull_stays() {
    assertThat(slid(box(), bag(-0.1, 0, 0.4, Optional.empty()), 1)).isZero();
  }

  @Test
  void kit_that_lies_further_out_never_comes_back() {
    assertThat(slid(box(), bag(1.5, 0.58, 0.1, Optional.of(0.008)), 1))
        .isCloseTo(0.58, within(1e-9));
  }
}
