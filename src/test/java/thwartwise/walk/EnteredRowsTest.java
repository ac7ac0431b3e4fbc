package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** Things in rows: asked for, shown again, and asked for again one by one. */
class EnteredRowsTest {
  private static final Sheet FULL = Sheet.full(true);

  private static final String KIT =
      """
        1. battery; 18.1436948; 0.9652; 0; 0.127; yes; midships thwart; 9
        2. motor; 10.43262451; -0.0762; -0.1016; 0.3556; no; none;\s
      again kit 2 asks for one of them again."""
          .indent(0)
          .stripTrailing();

  private static List<Answer> afterTheKit() {
    return FULL.upTo("bailer");
  }

  @Test
  void the_order_of_a_row_stands_in_the_prompt() {
    assertThat(Sheet.open(FULL.upTo("kit.1.any")).prompt())
        .isEqualTo("Kit 1, or no (name; kg; forward; to port; height; fastened; in; litres):");
    assertThat(Sheet.open(FULL.upTo("place.2.any")).prompt())
        .isEqualTo("Place 2 (name; across; forward; height; reach; people) [Enter: no more]:");
    assertThat(Sheet.open(FULL.upTo("hull.station.2.name")).prompt())
        .isEqualTo("Station 2 (forward; keel up; chine out; up; rail out; up):");
  }

  @Test
  void a_name_says_that_there_is_one() {
    assertThat(Sheet.answer(FULL.upTo("kit.1.any"), "battery")).isEqualTo(FULL.upTo("kit.1.mass"));
    assertThat(FULL.refused("kit.2.any", "battery"))
        .isEqualTo("\"battery\" is already the name of another. Type another name.");
  }

  @Test
  void a_figure_or_no_is_not_the_name_of_a_station() {
    assertThat(Sheet.open(Sheet.answer(FULL.upTo("hull.station.1.name"), "no")).key())
        .isEqualTo("hull.station.1.point.1.x");
    assertThat(Sheet.open(Sheet.answer(FULL.upTo("hull.station.2.name"), "1.8288")).key())
        .isEqualTo("hull.station.2.point.1.z");
  }

  /** DERIVED: 1.8288 m are 6 ft, exactly 72 in. */
  @ParameterizedTest
  @ValueSource(strings = {"1.8288", "6'", "6-0-0", "72 in", "6 ft 0", "182,88 cm"})
  void a_lone_figure_says_how_far_forward_a_station_stands(String typed) {
    List<Answer> taken = Sheet.answer(FULL.upTo("hull.station.2.name"), typed);
    assertThat(taken)
        .contains(new Answer("hull.station.2.x", typed), new Answer("hull.station.2.name", ""));
  }

  @Test
  void a_figure_in_feet_does_so_as_well() {
    Sheet feet = Sheet.full(false);
    for (String typed : List.of("48", "4'", "4-0-0", "about 48", "guess 48")) {
      assertThat(Sheet.open(Sheet.answer(feet.upTo("hull.station.2.name"), typed)).key())
          .isEqualTo("hull.station.2.point.1.z");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          don't know | "don't know" is no name of a station. Type its name, or the first figure of its row.
          four       | "four" is no name of a station. Type its name, or the first figure of its row.
          keep       | "keep" is no name of a station. Type its name, or the first figure of its row.
          48 indeed  | "48" is no name of a station. Type its name, or the first figure of its row.
          48 from aft | "48 from aft" begins with a figure: is it a name? How far forward the station stands is typed as a length alone.
          """)
  void what_is_no_name_never_becomes_that_of_a_station(String typed, String reason) {
    assertThat(FULL.refused("hull.station.2.name", typed)).isEqualTo(reason);
  }

  @Test
  void a_name_may_begin_with_a_figure_if_somebody_says_so() {
    assertThat(FULL.accepted("hull.station.2.name", "2nd frame indeed"))
        .isEqualTo("Station 2 of 3, name: 2nd frame");
  }

  /** Somebody who knows the mass types it where it is asked how it was weighed. */
  @ParameterizedTest
  @ValueSource(strings = {"68", "150 lb", "about 70", "guess 70"})
  void a_lone_mass_is_that_of_a_hull_weighed_as_one(String typed) {
    List<Answer> taken = Sheet.answer(FULL.upTo("hull.weighed"), typed);
    assertThat(taken).contains(new Answer("hull.weighed", ""), new Answer("hull.mass", typed));
  }

  @Test
  void a_station_without_a_name_is_listed_from_its_first_figure() {
    List<Answer> answers = FULL.upTo("hull.weighed");
    Reply.Listed list = (Reply.Listed) Sheet.WALK.take(answers, "list station");
    assertThat(list.text().lines().toList().get(2)).startsWith("  3. no; 3.3528; 0.2032; ");
  }

  @Test
  void a_list_that_has_come_to_its_end_is_shown_as_it_was_typed() {
    assertThat(FULL.accepted("kit.3.any", "no")).isEqualTo("Another piece of kit? no\n" + KIT);
  }

  @Test
  void it_is_shown_whenever_it_is_asked_for() {
    assertThat(Sheet.WALK.take(afterTheKit(), "list kit")).isEqualTo(new Reply.Listed(KIT));
    assertThat(Sheet.WALK.take(afterTheKit(), "list persons"))
        .isEqualTo(new Reply.Listed("There is no person yet."));
  }

  @Test
  void one_of_it_is_asked_for_again_and_the_rest_stays() {
    Reply.WentBack back = (Reply.WentBack) Sheet.WALK.take(afterTheKit(), "again kit 2");
    assertThat(back.note())
        .isEqualTo(
            "Asked again. You had: motor; 10.43262451; -0.0762; -0.1016; 0.3556; no; none; ");
    assertThat(Sheet.open(back.answers()).key()).isEqualTo("kit.2.name");
    List<Answer> heavier =
        Sheet.answer(back.answers(), "motor; 12; -0.0762; -0.1016; 0.3556; no; none; ");
    assertThat(Sheet.open(heavier).key()).isEqualTo("bailer");
  }

  @ParameterizedTest
  @CsvSource({
    "again kit 2, Kit 2 (name; kg; forward; to port; height; fastened; in; litres):",
    "again place 2, Place 2 (name; across; forward; height; reach; people):",
    "again person 1, Person 1 (name; kg; place; to port):",
    "again deck 1, 'Decked length 1 (from; to, forward of the aft end):'",
    "again station 2, Station 2 (forward; keel up; chine out; up; rail out; up):"
  })
  void what_is_asked_again_tells_the_order_of_its_row(String again, String prompt) {
    Reply.WentBack back = (Reply.WentBack) Sheet.WALK.take(FULL.upTo("waters.sheltered"), again);
    assertThat(Sheet.open(back.answers()).prompt()).isEqualTo(prompt);
  }

  /** Enter alone hid the order of the row, and nothing brought it back. */
  @ParameterizedTest
  @ValueSource(strings = {"opening.1.any", "kit.1.any", "chamber.1.any", "hull.decked.1.any"})
  void where_it_is_asked_whether_there_is_one_enter_alone_is_told_what_to_type(String question) {
    assertThat(Sheet.open(FULL.upTo(question)).enterAsksAlone()).isFalse();
    assertThat(FULL.refused(question, ""))
        .isEqualTo(
            "Nothing was typed. Type the row, no if there is none, or yes to be asked its values"
                + " one by one.");
  }

  /** They spoke of the order asked, which stood in the prompt that was gone by then. */
  @Test
  void values_asked_one_by_one_speak_of_no_row_whose_order_is_not_told() {
    for (String question : List.of("hull.station.2.x", "hull.station.2.point.1.z")) {
      assertThat(String.join(" ", Sheet.open(FULL.upTo(question)).how())).doesNotContain("row");
    }
  }

  @Test
  void enter_alone_at_another_row_asks_for_its_values_one_by_one() {
    assertThat(Sheet.open(FULL.upTo("hull.length")).enterAsksAlone()).isTrue();
    assertThat(Sheet.open(FULL.upTo("place.1.name")).enterAsksAlone()).isTrue();
    assertThat(Sheet.open(FULL.upTo("hull.station.2.name")).enterAsksAlone()).isFalse();
  }

  @Test
  void where_another_is_asked_for_the_number_alone_will_do() {
    Reply.WentBack back = (Reply.WentBack) Sheet.WALK.take(FULL.upTo("kit.3.any"), "again 1");
    assertThat(Sheet.open(back.answers()).key()).isEqualTo("kit.1.name");
  }

  @Test
  void what_is_not_there_is_not_asked_for_again() {
    assertThat(Sheet.WALK.take(afterTheKit(), "again kit 7"))
        .isEqualTo(
            new Reply.Refused(
                "There is no kit of that number. list kit shows them; then again kit and its"
                    + " number."));
    assertThat(Sheet.WALK.take(afterTheKit(), "again"))
        .isEqualTo(
            new Reply.Refused(
                "Type again with what and which, as in again kit 2; one of: chamber, deck, kit,"
                    + " opening, person, place, station. list kit shows the numbers."));
  }
}
