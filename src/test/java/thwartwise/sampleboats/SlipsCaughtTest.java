package thwartwise.sampleboats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No usual slip raises the answer in silence. Every kind is made once with each of twenty-two boats
 * and looked at by reader and doubts; of those that pass, the first few are answered in full. With
 * {@code -Dthwartwise.slips=22} all are, and {@code target/slip-table.md} is the whole table.
 */
class SlipsCaughtTest {
  private static final int ANSWERED = Integer.getInteger("thwartwise.slips", 1);
  private static final SlipJudge JUDGE = new SlipJudge();
  private static final SlipTable TABLE = new SlipTable();

  static Stream<SlipKind> kinds() {
    return SlipTable.kinds().stream();
  }

  @AfterAll
  static void write() throws IOException {
    Files.writeString(Path.of("target", "slip-table.md"), TABLE.markdown());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void a_slip_is_caught_or_costs_something_unless_nothing_can_show_it(SlipKind kind) {
    TABLE.fill(kind, OrdinaryBoats.twentyTwo(), JUDGE, ANSWERED);
    if (kind.mayRaise().isEmpty()) {
      assertThat(TABLE.raised(kind)).isEmpty();
    }
  }
}
