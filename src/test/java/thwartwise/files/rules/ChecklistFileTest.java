package thwartwise.files.rules;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.ChecklistPoint;
import thwartwise.checklist.Concern;
import thwartwise.json.UnusableInput;
import thwartwise.rules.LifeJacket;

class ChecklistFileTest {
  private static final Set<Concern> NAMELESS =
      EnumSet.of(Concern.ANY_BOAT, Concern.MOTOR, Concern.ROAD);
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
      "why" | "wy" | line 3, point 1: the key "wy" is not known here; the nearest known one is "why". Correct it or take it out.
      "No frogs" | "" | line 3, point 1: "look" is empty. Write what must be so.
      "any boat" | "any boats" | line 3, point 1: "concerns" is "any boats", wanted one of any boat, holes that something closes, hatches into chambers, air chambers, foam, kit, batteries and chargers, petrol, a motor, cleats, solar panels, chambers not proven tight, kit said to be fastened, a trailer or roof rack, people named aboard; the nearest is "any boat". Write which boats it is asked of.
      "concerns": "any boat" | "concerns": "any boat", "sets": "kit loose" | line 3, point 1: "sets" is "kit loose", which cannot be said of any boat. Let the point concern kit or batteries and chargers or solar panels or kit said to be fastened.
      "concerns": "any boat" | "concerns": "any boat", "grave": "holds" | line 3, point 1: "grave" is "holds", wanted one of holds the launch, put right first, advice. Write how grave it is when it is not so, or leave it out.
      "when": "each spring", | "when": "each spring", "use": "ask", | "use" is "ask", wanted one of on paper, asked, asked and on paper. Write what is done with the list, or leave it out.
      "concerns": "any boat" } | "concerns": "any boat" }, { "look": "No frogs", "why": "w", "concerns": "kit" } | line 3, point 2: the point on line 3 has the id "No frogs", too. Give each its own.
      "source": "club handbook, section 3", | `` | the key "source" is missing. Write title and section, or common practice, no source.
      """)
  void a_wrong_list_says_where(String there, String instead, String message) {
    assertThat(POND).contains(there);
    String wrong = POND.replace(there, instead == null ? "" : instead);
    assertThatThrownBy(() -> ChecklistFile.parse(wrong, "pond.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage("pond.json: " + message);
  }

  /** What "help checklists" shows can be copied as it stands. */
  @Test
  void the_example_of_the_help_is_a_list() throws IOException {
    String help = Files.readString(Path.of("src/main/resources/thwartwise/help/checklists.txt"));
    String example = help.substring(help.indexOf('{'), help.indexOf("\n  }\n") + 4);
    Checklist list = ChecklistFile.parse(example, "pond.json");
    assertThat(list.points())
        .extracting(ChecklistPoint::id)
        .containsExactly("pond-flag", "bung-tied");
    assertThat(list.points().get(1).fact()).contains(BoatFact.BUNG_LOST);
  }

  @Test
  void a_list_without_points_is_none() {
    String none = POND.replaceAll("(?s)\\[.*]", "[]");
    assertThatThrownBy(() -> ChecklistFile.parse(none, "pond.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessageStartingWith("pond.json: \"points\" is an empty list. Write at least one");
  }

  @Test
  void a_point_of_a_club_stands_in_the_place_of_ours_and_its_other_points_follow() {
    Checklist ours =
        ChecklistFile.parse(
            POND.replace("\"look\": \"No frogs\"", "\"id\": \"frogs\", \"look\": \"No frogs\""),
            "pond.json");
    Checklist clubs =
        ChecklistFile.parse(
            POND.replace("Pond", "Club")
                .replace(
                    "\"points\": [",
                    "\"points\": [ { \"id\": \"frogs\", \"look\": \"Two frogs\", \"why\": \"w\","
                        + " \"concerns\": \"kit\", \"grave\": \"holds the launch\","
                        + " \"sets\": \"kit loose\", \"againAfterDays\": 30 },"),
            "club.json");
    assertThat(Checklist.replaced(List.of(ours), List.of(clubs)))
        .extracting(Checklist::name, list -> list.points().stream().map(p -> p.look()).toList())
        .containsExactly(tuple("Pond", List.of("Two frogs")), tuple("Club", List.of("No frogs")));
    ChecklistPoint two = clubs.points().get(0);
    assertThat(two.gravity()).isEqualTo(PointGravity.HOLDS_THE_LAUNCH);
    assertThat(two.fact()).contains(BoatFact.KIT_LOOSE);
    assertThat(two.repeatAfterDays()).isEqualTo(30);
  }

  @Test
  void every_point_that_ships_has_an_id_of_its_own_and_says_how_to_look_where_it_is_asked() {
    List<ChecklistPoint> points =
        ChecklistFile.bundled().stream().flatMap(list -> list.points().stream()).toList();
    assertThat(points)
        .extracting(ChecklistPoint::id)
        .doesNotHaveDuplicates()
        .hasSizeGreaterThan(60);
    assertThat(points).noneMatch(point -> point.id().equals(point.look()));
    assertThat(ChecklistFile.bundled().stream().filter(list -> list.use().isAsked()))
        .allSatisfy(list -> assertThat(list.points()).noneMatch(p -> p.how().isBlank()));
  }

  /** "Yes" means that it is as it should be: of "nothing is left open" it would say two things. */
  @Test
  void what_is_asked_says_what_must_be_so_and_never_what_must_not() {
    assertThat(asked())
        .extracting(ChecklistPoint::look)
        .isNotEmpty()
        .noneMatch(look -> look.matches("(No|Nobody|Nothing|None|Never|Neither)\\b.*"));
  }

  /** A thing bears the mark of how it was measured; a boat as a whole bears none. */
  @Test
  void what_is_asked_of_no_thing_by_name_is_asked_again_after_a_time() {
    assertThat(asked())
        .filteredOn(p -> NAMELESS.contains(p.concerns()))
        .hasSizeGreaterThan(20)
        .allMatch(p -> p.repeatAfterDays() > 0, "is asked again");
  }

  private static List<ChecklistPoint> asked() {
    return ChecklistFile.bundled().stream()
        .filter(list -> list.use().isAsked())
        .flatMap(list -> list.points().stream())
        .toList();
  }

  @Test
  void every_file_in_the_folder_of_checklists_comes_with_the_program() throws IOException {
    try (var files = Files.list(Path.of("checklists"))) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              ChecklistFile.BUNDLED.stream().map(name -> name + ".json").toList());
    }
    assertThat(ChecklistFile.bundled())
        .extracting(Checklist::name)
        .startsWith("Before each launch", "Trial in knee-deep water", "Hull and fastenings");
    assertThat(ChecklistFile.onPaper())
        .extracting(Checklist::name)
        .containsExactly("Before each launch", "Trial in knee-deep water", "Hull and fastenings");
  }

  /** What each system of a boat is looked at for, so that no point is lost unnoticed. */
  @ParameterizedTest
  @CsvSource({
    "anchor-line-made-fast, ANY_BOAT, PUT_RIGHT_FIRST",
    "anchor-knife, ANY_BOAT, PUT_RIGHT_FIRST",
    "anchor-leads-from-bow, ANY_BOAT, HOLDS_THE_LAUNCH",
    "rower-and-seat, ANY_BOAT, PUT_RIGHT_FIRST",
    "jacket-class, PEOPLE, HOLDS_THE_LAUNCH",
    "jackets-fit, ANY_BOAT, HOLDS_THE_LAUNCH",
    "shelf-contents, ANY_BOAT, ADVICE",
    "bailer-tied, ANY_BOAT, PUT_RIGHT_FIRST",
    "first-half-hour, ANY_BOAT, PUT_RIGHT_FIRST",
    "throw-line-and-phone, ANY_BOAT, ADVICE",
    "dry-clothes, ANY_BOAT, ADVICE",
    "somebody-ashore, ANY_BOAT, ADVICE",
    "whistle-and-light, ANY_BOAT, ADVICE",
    "carry-handles, ANY_BOAT, ADVICE",
    "road-load, ROAD, PUT_RIGHT_FIRST",
    "hatch-locks, HATCHES, HOLDS_THE_LAUNCH",
    "pocket-closed, AIR, HOLDS_THE_LAUNCH",
    "stowed-inside-known, AIR, ADVICE",
    "box-not-relied-on, UNPROVEN_CHAMBERS, ADVICE",
    "box-vented-high, BATTERIES, HOLDS_THE_LAUNCH",
    "bung-tied, CLOSED_HOLES, PUT_RIGHT_FIRST"
  })
  void every_system_is_asked_about(String id, Concern concern, PointGravity gravity) {
    assertThat(asked())
        .filteredOn(point -> point.id().equals(id))
        .extracting(ChecklistPoint::concerns, ChecklistPoint::gravity)
        .containsExactly(tuple(concern, gravity));
  }

  /** The levels of the label stand in one place of the program; the list says the same. */
  @ParameterizedTest
  @CsvSource({"25, 35", "40, 40", "60, 45", "70.1, 50"})
  void the_classes_of_life_jackets_are_those_the_page_names(double mass, double newtons) {
    String how =
        asked().stream()
            .filter(point -> point.id().equals("jacket-class"))
            .findFirst()
            .orElseThrow()
            .how();
    assertThat(LifeJacket.newtons(mass)).isEqualTo(newtons);
    assertThat(how).containsPattern((int) newtons + " N (from|above) " + (int) mass + " kg");
  }
}
