package thwartwise.files.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.ChecklistPoint;
import thwartwise.checklist.ChecklistPoint.Concern;
import thwartwise.json.UnusableInput;

class ChecklistFileTest {
  private static final String POND =
      """
      { "format": "thwartwise/checklist/1", "name": "Pond", "when": "each spring",
        "basis": "FROM MEMORY", "source": "club handbook, section 3",
        "points": [ { "look": "No frogs", "why": "they bail badly", "concerns": "any boat" } ] }
      """;

  @Test
  void a_list_arrives_with_its_points_and_its_source() {
    Checklist pond = ChecklistFile.parse(POND, "pond.json");
    assertThat(pond.name()).isEqualTo("Pond");
    assertThat(pond.when()).isEqualTo("each spring");
    assertThat(pond.source()).isEqualTo("club handbook, section 3 (FROM MEMORY)");
    assertThat(pond.points())
        .containsExactly(new ChecklistPoint("No frogs", "they bail badly", Concern.ANY_BOAT));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      checklist/1 | boat/1 | this is a boat file, wanted a checklist file. Name another file.
      "why" | "wy" | point 1: the key "wy" is not known here; the nearest known one is "why". Correct it or take it out.
      "No frogs" | "" | point 1: "look" is empty. Write what must be so.
      "any boat" | "any boats" | point 1: "concerns" is "any boats", wanted one of any boat, holes that something closes, hatches into chambers, air chambers, foam, kit, batteries and chargers, petrol, a motor, cleats; the nearest is "any boat". Write which boats it is asked of.
      "source": "club handbook, section 3", | `` | the key "source" is missing. Write title and section, or common practice, no source.
      """)
  void a_wrong_list_says_where(String there, String instead, String message) {
    assertThat(POND).contains(there);
    String wrong = POND.replace(there, instead == null ? "" : instead);
    assertThatThrownBy(() -> ChecklistFile.parse(wrong, "pond.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage("pond.json: " + message);
  }

  @Test
  void a_list_without_points_is_none() {
    String none = POND.replaceAll("(?s)\\[.*]", "[]");
    assertThatThrownBy(() -> ChecklistFile.parse(none, "pond.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessageStartingWith("pond.json: \"points\" is an empty list. Write at least one");
  }

  @Test
  void every_file_in_the_folder_of_checklists_comes_with_the_program() throws IOException {
    try (var files = Files.list(Path.of("checklists"))) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              ChecklistFile.SHIPPED.stream().map(name -> name + ".json").toList());
    }
    assertThat(ChecklistFile.shipped())
        .extracting(Checklist::name)
        .containsExactly("Before each launch", "Trial in knee-deep water", "Hull and fastenings");
  }
}
