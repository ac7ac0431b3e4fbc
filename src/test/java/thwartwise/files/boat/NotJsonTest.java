package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.json.UnusableInput;

/** Text that is no JSON, or JSON that is no object. */
class NotJsonTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      { | line 1, column 2: the text ends too early. Close the open quote or bracket, or copy it again.
      {"name": "abc | line 1, column 14: the text ends too early. Close the open quote or bracket, or copy it again.
      {"a":1,} | line 1, column 8: this is not JSON. Look for a missing comma, quote or bracket just before it.
      hello | line 1, column 1: this is not JSON. Look for a missing comma, quote or bracket just before it.
      {"a":1} {} | line 1, column 9: something stands after the end of the object. Take it out.
      [1, 2] | the file holds a list, wanted a boat file: an object in braces that begins with "format": "thwartwise/boat/1".
      5 | the file holds the number 5, wanted a boat file: an object in braces that begins with "format": "thwartwise/boat/1".
      null | the file holds null, wanted a boat file: an object in braces that begins with "format": "thwartwise/boat/1".
      {"format": 5} | "format" is the number 5, wanted "thwartwise/boat/1". Check that this is a boat file.
      """)
  void text_that_is_no_boat_is_refused_with_its_place(String text, String says) {
    refuses(text, says);
  }

  @ParameterizedTest
  @CsvSource({"[,5000", "9,5000"})
  void brackets_and_numbers_without_end_are_refused(String piece, int times) {
    refuses(
        "{\"a\":" + piece.repeat(times),
        "brackets stand too deep inside each other, or a number or name has no end."
            + " Check that this is the right file.");
  }

  @ParameterizedTest
  @CsvSource({"'\u0000\u0001'", "'\u001b[31m'"})
  void control_characters_are_no_json(String text) {
    refuses(
        text,
        "line 1, column 1: this is not JSON."
            + " Look for a missing comma, quote or bracket just before it.");
  }

  private static void refuses(String text, String says) {
    assertThatThrownBy(() -> BoatFile.parse(text, "soup.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage("soup.json: " + says);
  }
}
