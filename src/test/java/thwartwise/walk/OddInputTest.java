package thwartwise.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.measure.Quoted;

/** Whatever is typed at whatever question: one reply, no exception, no answer lost. */
class OddInputTest {
  private static final List<String> ODD =
      List.of(
          "",
          " ",
          "\t",
          "\n",
          "-",
          "--",
          ".",
          ",",
          "0",
          "-0",
          "-1",
          "1e400",
          "1e-400",
          "NaN",
          "Infinity",
          "-Infinity",
          "null",
          "true",
          "999999999999",
          "0.0000000000000000001",
          "1/0",
          "1/3",
          "1,020",
          "1.2.3",
          "3' 14\"",
          "'",
          "\"",
          "\\",
          "%s%n%d",
          "${name}",
          "; rm",
          "../..",
          "<b>",
          "{\"a\":1}",
          "🛶",
          "é",
          "e\u0301",
          "٣",
          "１",
          "\u0000",
          "\u001b[2J\u001b[31m",
          "\u202eabc",
          "\ud800",
          "a\nb",
          "x".repeat(1_000_000),
          "9".repeat(1_000_000),
          "' ".repeat(500_000),
          "change",
          "change 0",
          "change 99999",
          "yes no",
          "today",
          "2026-02-30",
          "3 gal",
          "12 st 4",
          "40 1/2");

  @Test
  void odd_input_at_every_question_gets_one_harmless_line_and_loses_nothing() {
    for (Sheet sheet : List.of(Sheet.small(), Sheet.full(false))) {
      for (List<Answer> stop : sheet.stops()) {
        ODD.forEach(typed -> survives(stop, typed));
      }
    }
  }

  private static void survives(List<Answer> stop, String typed) {
    Reply reply = Sheet.WALK.take(stop, typed);
    if (reply instanceof Reply.Accepted accepted) {
      assertThat(accepted.answers()).hasSize(stop.size() + 1);
      assertThat(accepted.answers().subList(0, stop.size())).isEqualTo(stop);
      harmless(accepted.understood());
    } else {
      assertThat(reply).isInstanceOf(Reply.Refused.class);
      harmless(((Reply.Refused) reply).reason());
    }
  }

  private static void harmless(String line) {
    assertThat(line).isNotBlank().hasSizeLessThan(600);
    assertThat(line.codePoints()).allMatch(Quoted::isHarmless);
  }

  @Test
  void odd_answers_in_a_draft_stop_the_walk_at_their_question_and_nowhere_else() {
    List<Answer> all = Sheet.small().toTheEnd();
    for (int i = 0; i < all.size(); i++) {
      String key = all.get(i).question();
      for (String typed : List.of("\u0000", "x".repeat(1_000_000))) {
        List<Answer> spoilt =
            all.stream().map(a -> a.question().equals(key) ? new Answer(key, typed) : a).toList();
        Step.Ask ask = (Step.Ask) Sheet.WALK.next(spoilt);
        assertThat(ask.question().key()).isEqualTo(key);
        assertThat(ask.note()).isPresent();
        harmless(ask.note().orElseThrow());
      }
    }
  }
}
