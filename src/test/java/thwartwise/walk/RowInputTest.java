package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** The table of stations, a row at a time. */
class RowInputTest {
  private static final Sheet SMALL = Sheet.small();
  private static final String FIRST = "hull.station.1.point.1.z";

  @Test
  void a_row_gives_the_same_answers_as_its_values_one_by_one() {
    List<Answer> before = SMALL.upTo(FIRST);
    Reply.Accepted row = (Reply.Accepted) Sheet.WALK.take(before, "0.06; 0.5 ;0.44");
    assertThat(row.answers()).isEqualTo(SMALL.upTo("hull.station.2.name"));
    assertThat(row.understood())
        .isEqualTo(
            """
            Station 1 "aft end", keel, height: 60 mm
              Station 1 "aft end", rail, half-breadth: 0.50 m
              Station 1 "aft end", rail, height: 0.44 m""");
  }

  @Test
  void a_row_may_begin_with_how_far_forward_it_stands_and_may_stop_early() {
    Reply.Accepted row =
        (Reply.Accepted) Sheet.WALK.take(SMALL.upTo("hull.station.2.x"), "120 cm; 0; 0.6");
    assertThat(row.answers()).hasSize(SMALL.upTo("hull.station.2.point.2.z").size());
    assertThat(Sheet.open(row.answers()).key()).isEqualTo("hull.station.2.point.2.z");
  }

  @Test
  void a_row_in_feet_and_inches_holds_blanks() {
    Sheet feet = Sheet.full(false);
    Reply.Accepted row =
        (Reply.Accepted)
            Sheet.WALK.take(
                feet.upTo("hull.station.2.x"),
                "6'; 0; 22; 1/2; 2' 3 1/2\"; 16 1/2; 22; .5; 27; 16,5");
    assertThat(Sheet.open(row.answers()).key())
        .isEqualTo(Sheet.open(feet.upTo("hull.station.3.name")).key());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
      0.06; 0.5; 44 | Value 3 of the row, "44" for Station 1 "aft end", rail, height: 44.00 m is not between 0 and 1.5 m
      0.06; wide; 0.44 | Value 2 of the row, "wide" for Station 1 "aft end", rail, half-breadth: "wide" is not a length this can use.
      0.06; ; 0.44 | Value 2 of the row, "" for Station 1 "aft end", rail, half-breadth: Nothing was typed.
      0.06; back; 0.44 | Value 2 of the row, "back" for Station 1 "aft end", rail, half-breadth: a word, and no value. Nothing of the row was taken.
      0.06; 0.5; 0.44; 1.2 | Value 4 of the row, "1.2": the row ends after 3 of them. Nothing of the row was taken.
      0.5; 0.5; 0.44 | Value 3 of the row, "0.44" for Station 1 "aft end", rail, height: Station 1 "aft end": the rail (0.44 m) is lower than the keel
      """)
  void a_wrong_value_is_named_and_nothing_of_the_row_is_taken(String typed, String message) {
    assertThat(SMALL.refused(FIRST, typed))
        .startsWith(message)
        .endsWith("Nothing of the row was taken.");
  }

  /** "Did you mean" about one value of a row was answered by yes, and yes was not understood. */
  @Test
  void what_was_probably_meant_is_offered_as_a_whole_row() {
    List<Answer> before = SMALL.upTo(FIRST);
    Reply.Refused refused = (Reply.Refused) Sheet.WALK.take(before, "0.06; 0.5; 44");

    assertThat(refused.meant()).hasValue("0.06; 0.5;0.44 m");
    assertThat(understood(before, refused.meant().orElseThrow()))
        .isEqualTo(understood(before, "0.06; 0.5; 0.44"));
  }

  private static String understood(List<Answer> before, String typed) {
    return ((Reply.Accepted) Sheet.WALK.take(before, typed)).understood();
  }

  @Test
  void elsewhere_it_is_a_sign_like_any_other() {
    assertThat(SMALL.accepted("measuredBy", "Ann; Ben")).endsWith("Ann; Ben");
    assertThat(SMALL.refused("hull.floor", "30; 3")).startsWith("\"30; 3\" is not a length");
  }

  private static List<Answer> row(List<Answer> before, String typed) {
    return ((Reply.Accepted) Sheet.WALK.take(before, typed)).answers();
  }

  @Test
  void a_thing_on_one_line_gives_the_same_answers_as_one_by_one() {
    Sheet full = Sheet.full(true);
    assertThat(
            row(
                full.upTo("kit.1.any"),
                "battery; 18.1436948; 0.9652; 0; 0.127; yes; midships thwart; 9"))
        .isEqualTo(full.upTo("kit.2.any"));
    assertThat(row(full.upTo("place.2.any"), "stern seat; across; 0.4572; 0.2667; 0.4064; 1"))
        .isEqualTo(full.upTo("place.3.any"));
    assertThat(row(full.upTo("person.1.any"), "helm; 80.73944186; stern seat; 0"))
        .isEqualTo(full.upTo("person.2.any"));
  }

  @Test
  void a_row_that_fails_says_no_other_thing_was_there() {
    assertThat(Sheet.full(true).refused("kit.2.any", "motor; heavy"))
        .isEqualTo(
            "Value 2 of the row, \"heavy\" for Kit \"motor\", mass: \"heavy\" is not a mass this can"
                + " use. Type a mass such as 95 (kg), 500 g or 12 st 4 lb. Nothing of the row was taken.");
  }

  /** What the prompt says the order is, is the order of the questions. */
  @Test
  void the_order_told_is_the_order_asked() {
    List<String> asked =
        Sheet.full(true).upTo("kit.2.any").stream()
            .map(Answer::question)
            .filter(key -> key.startsWith("kit.1.") && !key.endsWith(".any"))
            .toList();
    assertThat(asked)
        .containsExactly(
            "kit.1.name",
            "kit.1.mass",
            "kit.1.x",
            "kit.1.y",
            "kit.1.z",
            "kit.1.fastened",
            "kit.1.in",
            "kit.1.litres");
    assertThat(String.join(" ", Sheet.open(Sheet.full(true).upTo("kit.1.name")).how()))
        .endsWith(
            "name; mass; forward of the aft end; to port; height; fastened; chamber it is in; and of"
                + " what is fastened or stowed in one, its litres (may stay empty).");
  }

  /** Swamped it floats away: its litres lift nothing, and are not asked of it. */
  @Test
  void the_litres_are_only_asked_of_what_is_fastened_or_stowed_in_a_chamber() {
    Sheet full = Sheet.full(true);
    List<Answer> loose =
        row(full.upTo("kit.1.any"), "anchor; 5; 0.9652; 0; 0.127; no; midships thwart");
    assertThat(Sheet.open(loose).key()).isEqualTo("kit.1.litres");
    loose = row(full.upTo("kit.1.any"), "anchor; 5; 0.9652; 0; 0.127; no; none");
    assertThat(Sheet.open(loose).key()).isEqualTo("kit.2.any");
    assertThat(Sheet.open(row(full.upTo("kit.1.any"), "anchor; 5; 1; 0; 0.127; yes; none")).key())
        .isEqualTo("kit.1.litres");
    assertThat(row(full.upTo("kit.1.any"), "anchor; 5; 0.9652; 0; 0.127; no; none; "))
        .isEqualTo(loose);
  }

  /** Where the order of a row is told, a row typed in that order is taken. */
  @Test
  void the_order_of_the_row_of_a_raked_end_is_told_and_taken() {
    Sheet raked = Sheet.full(true).with("hull.alike", "yes");
    for (String[] end :
        new String[][] {
          {
            "hull.station.1.name", "transom; no; .0508; .0508; .0254; .4572; .0635; 0; .5842; .4318"
          },
          {"hull.station.3.name", "no; 3.35; .2; 3.45; .0254; .254; 3.6576; .0381; .5842"}
        }) {
      List<Answer> before = raked.upTo(end[0]);
      assertThat(String.join(" ", Sheet.open(before).how()))
          .endsWith(
              "upright: yes if a plumb line touches the whole end; then the row as prompted. A raked"
                  + " end: no; keel forward; up; chine forward; out; up; rail forward; out; up."
                  + " Forward is from the aftmost point of the boat.");
      assertThat(Sheet.open(row(before, end[1])).key()).doesNotStartWith(end[0].substring(0, 14));
    }
    assertThat(String.join(" ", Sheet.open(raked.upTo("hull.station.2.name")).how()))
        .doesNotContain("raked");
  }
}
