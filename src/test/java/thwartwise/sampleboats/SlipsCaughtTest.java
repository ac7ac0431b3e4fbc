package thwartwise.sampleboats;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;

/**
 * No usual slip raises the answer in silence. Each kind is made once with each of eleven ordinary
 * boats and looked at by reader and doubts; how many it takes at least to be caught stands in a
 * file, so that a doubt that is lost shows. One boat, which is quick to answer for, is answered
 * where a slip is not caught. {@link SlipTable} does so for twenty-two boats.
 */
class SlipsCaughtTest {
  private static final SlipJudge JUDGE = new SlipJudge();
  private static final Map<String, Integer> CAUGHT = caught();

  /** A canoe: two places, nothing on the floor, a few seconds for all kinds. */
  private static final Boat QUICK = MouldedBoats.canoe();

  static Stream<SlipKind> kinds() {
    return SlipTable.kinds().stream();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void no_slip_is_caught_on_fewer_boats_than_before(SlipKind kind) {
    List<SlippedBoat> slips = SlipTable.oneEach(kind, OrdinaryBoats.all());
    long caught = slips.stream().filter(s -> JUDGE.caught(s).isPresent()).count();
    assertThat(CAUGHT).containsKey(kind.name());
    assertThat(caught).isGreaterThanOrEqualTo(CAUGHT.get(kind.name()));
  }

  @Test
  void the_file_names_every_kind_and_no_other() {
    assertThat(CAUGHT.keySet())
        .containsExactlyInAnyOrderElementsOf(kinds().map(SlipKind::name).toList());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void a_slip_that_is_not_caught_raises_nothing_unless_nothing_can_show_it(SlipKind kind) {
    if (kind.mayRaise().isPresent()) {
      return;
    }
    SlipTable.oneEach(kind, List.of(QUICK)).stream()
        .filter(slip -> JUDGE.caught(slip).isEmpty())
        .forEach(
            slip ->
                assertThat(JUDGE.of(slip))
                    .as(slip.how())
                    .extracting(SlipJudge.Verdict::outcome)
                    .isNotEqualTo(SlipOutcome.RAISED));
  }

  /** Of eleven boats, by kind. */
  private static Map<String, Integer> caught() {
    try (InputStream in =
        SlipsCaughtTest.class.getResourceAsStream("/reference/slips-caught.csv")) {
      Map<String, Integer> read = new LinkedHashMap<>();
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split(";"))
          .forEach(cells -> read.put(cells[0], Integer.parseInt(cells[1])));
      return read;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
