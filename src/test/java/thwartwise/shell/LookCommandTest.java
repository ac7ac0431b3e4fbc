package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.files.boat.BoatFile;

class LookCommandTest {
  private static final String CLUB =
      """
      { "format": "thwartwise/checklist/1", "name": "Club rules", "when": "each spring",
        "use": "asked", "basis": "judgement", "source": "club handbook",
        "points": [
          { "id": "hull-skin", "look": "The bottom was seen by the bosun", "how": "ask him",
            "why": "he knows", "concerns": "any boat", "grave": "holds the launch" },
          { "id": "flag", "look": "The flag is aboard", "how": "look", "why": "custom",
            "concerns": "any boat" } ] }
      """;

  @TempDir Path temp;
  private final TestShell shell = TestShell.open();
  private Path file;

  @BeforeEach
  void lay_out_the_demo_boat() throws IOException {
    file = temp.resolve("boats").resolve("custard-tart.json");
    Files.createDirectories(file.getParent());
    Files.writeString(file, BoatFile.write(DemoCommand.asOf(TestShell.TODAY)));
  }

  private int look(String... typed) {
    return shell
        .typing(typed)
        .run("look", "--boat", "Custard Tart", "--by", "Iris", "--folder", temp.toString());
  }

  @Test
  void a_point_is_shown_with_how_and_why_and_its_answer_is_kept_at_once() {
    shell.beforeEachAnswer(() -> {});
    assertThat(look("why", "hm", "yes, dry and hard", "leave")).isZero();
    assertThat(shell.out())
        .contains(
            """
            HULL AND FASTENINGS
            1/""")
        .contains("How: press with the thumb and knock along every seam")
        .contains("Why: rot and broken skin begin where nobody looks.")
        .contains(
            """
            "hm" is none of the answers. Type yes, no or n/a, Enter for not looked at, a
            note behind a comma; or why, back, list or leave.
            """);
    PointAnswer first = boat().pointAnswers().get(0);
    assertThat(first.condition()).isEqualTo(PointCondition.AS_IT_SHOULD_BE);
    assertThat(first.note()).isEqualTo("dry and hard");
    assertThat(first.by()).isEqualTo("Iris");
    assertThat(first.date()).isEqualTo(TestShell.TODAY);
    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 80);
  }

  /** It does not apply where there is no such thing, and is bad where there should be one. */
  @ParameterizedTest
  @ValueSource(strings = {"none", "Nothing", "-", "never", "none, sold"})
  void a_none_is_asked_again_since_it_may_mean_two_things(String none) {
    assertThat(look(none, "leave")).isZero();
    assertThat(shell.out().replace("\n", " "))
        .contains(
            '"'
                + none
                + "\" may mean two things. Type no (not as it should be) or n/a (does not apply). ");
    assertThat(boat().pointAnswers().get(0).condition()).isEqualTo(PointCondition.NOT_LOOKED_AT);
  }

  @ParameterizedTest
  @CsvSource({
    "yes, AS_IT_SHOULD_BE",
    "yep, AS_IT_SHOULD_BE",
    "ok, AS_IT_SHOULD_BE",
    "no, NOT_AS_IT_SHOULD_BE",
    "nope, NOT_AS_IT_SHOULD_BE",
    "n/a, DOES_NOT_APPLY",
    "does not apply, DOES_NOT_APPLY",
    "'', NOT_LOOKED_AT",
    "don't know, NOT_LOOKED_AT"
  })
  void every_answer_is_kept_as_what_it_means(String typed, PointCondition kept) {
    look(typed, "", "leave");
    assertThat(boat().pointAnswers().get(0).condition()).isEqualTo(kept);
  }

  /** Kept as it was typed, the boat file could not be read any more. */
  @Test
  void a_note_that_no_file_can_hold_is_asked_for_again() {
    look("no, dented\u0007", "no", "a\u0000b", "dented", "leave");
    assertThat(shell.out())
        .contains("\"dented?\" has signs in it that cannot be printed. Type it without them.\n")
        .contains("\"a?b\" has signs in it that cannot be printed.");
    assertThat(BoatFile.read(file).pointAnswers().get(0).note()).isEqualTo("dented");
  }

  @Test
  void whatever_was_not_answered_stands_as_not_looked_at() {
    look("leave");
    assertThat(boat().pointAnswers())
        .hasSizeGreaterThan(40)
        .allMatch(a -> a.condition() == PointCondition.NOT_LOOKED_AT);
  }

  @Test
  void a_second_look_goes_on_where_the_first_was_left_and_asks_again_what_was_bad() {
    look("no", "soft", "yes", "leave");
    look("", "leave");
    assertThat(shell.out())
        .contains("On 2026-06-01 Iris found it not as it should be: soft. Enter leaves that.");
    assertThat(boat().pointAnswers().get(0).isFault()).isTrue();
    assertThat(look("yes", "leave")).isZero();
    assertThat(boat().pointAnswers().get(0).isFault()).isFalse();
  }

  @Test
  void back_asks_the_one_before_again() {
    look("yes", "back", "n/a", "leave");
    assertThat(boat().pointAnswers().get(0).condition()).isEqualTo(PointCondition.DOES_NOT_APPLY);
  }

  /** Enter there takes a good answer back, and leaves a bad one. */
  @Test
  void a_point_gone_back_to_shows_what_was_answered_and_what_enter_does() {
    look("yes, dry", "back", "leave");
    assertThat(shell.out())
        .contains(
            "On 2026-06-01 Iris found it as it should be: dry. Enter: not looked at since.\n");
    look("n/a", "back", "", "leave");
    assertThat(shell.out())
        .contains("On 2026-06-01 Iris said it does not apply. Enter: not looked at since.\n");
    assertThat(boat().pointAnswers().get(1).condition()).isEqualTo(PointCondition.NOT_LOOKED_AT);
  }

  /** It would neither be asked nor printed. */
  @Test
  void a_list_of_a_club_that_is_only_to_be_printed_is_refused() throws IOException {
    Path lists = Files.createDirectories(temp.resolve("checklists"));
    Path club = lists.resolve("club.json");
    Files.writeString(club, CLUB.replace("\"asked\"", "\"on paper\""));
    assertThat(look("yes")).isEqualTo(2);
    assertThat(shell.err().strip().replaceAll("\\s+", " "))
        .endsWith(
            club
                + ": \"use\" is \"on paper\", and a list of your own is only asked. Write"
                + " \"asked\".");
  }

  @Test
  void something_to_be_put_right_is_said_with_the_exit_code() {
    assertThat(look("no, soft", "leave")).isEqualTo(1);
    assertThat(shell.out())
        .contains("To be put right before anybody goes.")
        .contains("1 not as it should be.")
        .contains("- put right first: Bottom, chines and stem");
  }

  /** Kept in the order of the lists; long lines go on behind their dash. */
  @Test
  void what_is_bad_is_listed_gravest_first_with_its_item_once() throws IOException {
    Boat faulty = DemoCommand.faultyAsOf(TestShell.TODAY);
    Files.writeString(file, BoatFile.write(faulty));
    shell
        .typing("leave")
        .run("look", "--boat", file.toString(), "--by", "Iris", "--folder", temp.toString());
    assertThat(shell.out())
        .contains(
            """
            - holds the launch: Every screw-in pocket, deck plate and hole in its walls is
              closed, each with ring and cover (stern bench)
            """);
    List<String> grades =
        shell
            .out()
            .lines()
            .filter(line -> line.startsWith("- "))
            .map(line -> line.substring(2, line.indexOf(':')))
            .toList();
    assertThat(grades)
        .hasSize(7)
        .isSorted()
        .startsWith("holds the launch")
        .endsWith("put right first");
    assertThat(BoatFile.read(file).pointAnswers()).containsAll(faulty.pointAnswers());
  }

  @Test
  void a_list_of_a_club_in_the_folder_replaces_by_id_and_adds() throws IOException {
    Path lists = Files.createDirectories(temp.resolve("checklists"));
    Files.writeString(lists.resolve("club.json"), CLUB);
    assertThat(look("no, never", "leave")).isEqualTo(1);
    assertThat(shell.out())
        .contains("The bottom was seen by the bosun.")
        .contains("This holds the launch until it is put right.")
        .doesNotContain("no dull sound");
    assertThat(boat().pointAnswers())
        .extracting(PointAnswer::system, PointAnswer::point)
        .contains(org.assertj.core.groups.Tuple.tuple("Club rules", "flag"));
  }

  @Test
  void two_lists_of_a_club_with_the_same_point_are_named_and_neither_is_taken() throws IOException {
    Path lists = Files.createDirectories(temp.resolve("checklists"));
    Path first = Files.writeString(lists.resolve("club.json"), CLUB);
    Path second =
        Files.writeString(lists.resolve("spring.json"), CLUB.replace("hull-skin", "keel"));
    assertThat(look("yes")).isEqualTo(2);
    assertThat(shell.err().strip().replaceAll("\\s+", " "))
        .endsWith(
            second
                + ": the point \"flag\" stands in "
                + first
                + ", too. Take it out of one of the two files, or give it another \"id\" there.");
    assertThat(boat().pointAnswers()).isEmpty();
  }

  @Test
  void a_wrong_list_of_a_club_is_named_and_nothing_is_written() throws IOException {
    Path lists = Files.createDirectories(temp.resolve("checklists"));
    Files.writeString(lists.resolve("club.json"), CLUB.replace("\"grave\"", "\"gravy\""));
    String before = Files.readString(file);
    assertThat(look("yes")).isEqualTo(2);
    assertThat(shell.err().strip().replaceAll("\\s+", " "))
        .endsWith(
            "club.json: line 4, point 1: the key \"gravy\" is not known here; the nearest known one is"
                + " \"grave\". Correct it or take it out.");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void what_must_be_put_right_changes_the_verdict_and_is_first_on_the_screen() {
    look("no, soft at the chine", "leave");
    TestShell again = TestShell.withoutAdvice();
    assertThat(again.run("inspect", "--boat", "Custard Tart", "--folder", temp.toString()))
        .isEqualTo(1);
    assertThat(again.out())
        .startsWith("Custard Tart: launch only after the work listed here is done.")
        .contains("1. Put right: soft at the chine (hull and fastenings).")
        .contains("Soft at the chine (hull and fastenings).");
    assertThat(again.out().lines().filter(l -> !l.startsWith("Record:")))
        .allMatch(line -> line.length() <= 80);
  }

  private Boat boat() {
    return BoatFile.read(file);
  }
}
