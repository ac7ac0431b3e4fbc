package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.Collections;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.files.report.OldNames;
import thwartwise.report.AdviceWords.Subjects;

class SubjectsTest {
  @Test
  void what_checks_share_is_told_once() {
    assertThat(
            Subjects.listed(
                Stream.of(
                        "swamped, heel",
                        "swamped, lift to spare",
                        "freeboard at rest",
                        "anchoring by the bow, freeboard left")
                    .map(OldNames::question)
                    .toList()))
        .isEqualTo(
            "swamped: heel and lift to spare; freeboard at rest; anchoring by the bow: freeboard"
                + " left");
  }

  @Test
  void the_same_measure_twice_is_told_once() {
    assertThat(Subjects.listed(Collections.nCopies(2, OldNames.question("swamped, heel"))))
        .isEqualTo("swamped: heel");
  }
}
