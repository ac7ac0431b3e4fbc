package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.Reference;

class BeaufortTest {
  static Stream<Reference> edges() {
    return Reference.of("beaufort");
  }

  @ParameterizedTest
  @MethodSource("edges")
  void a_force_ends_where_the_table_says(Reference r) {
    Beaufort force = Beaufort.values()[(int) r.in("force")];
    assertThat(force.most()).isCloseTo(r.wanted("most"), within(r.near("most")));
    assertThat(Beaufort.of(force.most())).isEqualTo(force);
  }

  @Test
  void a_speed_between_two_printed_edges_is_the_higher_force() {
    assertThat(Beaufort.of(7.95)).isEqualTo(Beaufort.F5);
    assertThat(Beaufort.of(0)).isEqualTo(Beaufort.F0);
    assertThat(Beaufort.of(60)).isEqualTo(Beaufort.F12);
  }

  @Test
  void a_speed_that_is_no_number_is_the_worst_there_is() {
    assertThat(Beaufort.of(Double.NaN)).isEqualTo(Beaufort.F12);
  }
}
