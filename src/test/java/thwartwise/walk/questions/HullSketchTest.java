package thwartwise.walk.questions;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.inspection.PlainHulls;

class HullSketchTest {

  static Stream<Boat> boats() {
    return Stream.of(
        PlainHulls.pram(),
        PlainHulls.skiff(),
        PlainHulls.punt(),
        PlainHulls.canoe(),
        PlainHulls.roundDinghy(),
        PlainHulls.dory());
  }

  @ParameterizedTest
  @MethodSource("boats")
  void a_boat_alike_on_both_sides_is_drawn_alike(Boat boat) {
    List<String> lines = HullSketch.of(boat.hull().stations());
    List<String> above = lines.subList(1, lines.indexOf("From the side, to the same scale:"));

    List<String> mirrored = new ArrayList<>(above);
    Collections.reverse(mirrored);
    assertThat(above).isEqualTo(mirrored).anyMatch(line -> line.contains("o"));
  }
}
