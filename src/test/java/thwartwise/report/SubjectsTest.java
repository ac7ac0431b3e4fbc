package thwartwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SubjectsTest {
  @Test
  void what_checks_share_is_told_once() {
    assertThat(
            Subjects.listed(
                List.of("swamped, heel", "swamped, lift to spare", "freeboard at rest", "b, c")))
        .isEqualTo("swamped: heel and lift to spare; freeboard at rest; b: c");
  }

  @Test
  void the_same_measure_twice_is_told_once() {
    assertThat(Subjects.listed(List.of("swamped, heel", "swamped, heel")))
        .isEqualTo("swamped: heel");
  }
}
