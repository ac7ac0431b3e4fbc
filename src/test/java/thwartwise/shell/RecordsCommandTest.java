package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.inspection.Report;
import thwartwise.record.SampleBoats;

class RecordsCommandTest {
  private static final Report GOOD = MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);

  @TempDir Path temp;
  private String boat;
  private String folder;

  @BeforeEach
  void keep_a_record_made_by_ann() throws IOException {
    boat = Files.writeString(temp.resolve("soup.json"), SampleBoats.json()).toString();
    folder = temp.resolve("kept").toString();
    inspect("--by", "Ann Lee");
  }

  @Test
  void each_record_is_listed_with_its_day_verdict_limits_and_maker() throws IOException {
    correct();
    TestShell shell = TestShell.open();

    assertThat(shell.run("records", "--folder", folder)).isZero();

    assertThat(shell.out())
        .isEqualTo(
            """
            Soup Ladle
            ==========
            1. 1 June 2026, 12:00 (UTC) by Ann Lee [soup-ladle/1]. Nothing found against it
               within the limits of this inspection. One adult, people up to 110 kg, load up
               to 140 kg. Corrected by soup-ladle/2.
            2. 1 June 2026, 12:00 (UTC) by Bob [soup-ladle/2]. Nothing found against it
               within the limits of this inspection. One adult, people up to 110 kg, load up
               to 140 kg. It corrects record 1 (%s), because: the
               scales were set to pounds.

            "compare" with two of the names in brackets compares two records. "records
            check" says whether one of them or its pages was changed, added or lost.
            """
                .formatted(names().get(0)));
  }

  @Test
  void one_boat_can_be_asked_for_by_name() throws IOException {
    String other = temp.resolve("egg.json").toString();
    Files.writeString(Path.of(other), SampleBoats.json().replace("Soup Ladle", "Egg Whisk"));
    TestShell.whoseInspection((b, r, d) -> GOOD)
        .run("inspect", "--boat", other, "--folder", folder);

    TestShell all = TestShell.open();
    all.run("records", "--folder", folder);
    assertThat(all.out()).contains("Soup Ladle\n", "Egg Whisk\n");
    TestShell one = TestShell.open();
    assertThat(one.run("records", "--boat", "egg  WHISK", "--folder", folder)).isZero();
    assertThat(one.out()).startsWith("Egg Whisk\n").doesNotContain("Soup Ladle");
  }

  @Test
  void a_boat_nobody_kept_is_refused() {
    TestShell shell = TestShell.open();
    assertThat(shell.run("records", "--boat", "Colander", "--folder", folder)).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            Path.of(folder, "records")
                + ": no record of the boat \"Colander\" is kept here."
                + " \"records\" lists what is.\n");
  }

  @Test
  void a_folder_without_records_is_no_sound_chain() {
    String empty = temp.resolve("elsewhere").toString();
    TestShell shell = TestShell.open();
    assertThat(shell.run("records", "check", "--folder", empty)).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            Path.of(empty, "records")
                + ": no record is kept here. Inspect a boat first, or name a --folder.\n");
  }

  @Test
  void a_chain_that_fits_says_so_and_names_its_last_hash() throws IOException {
    TestShell shell = TestShell.open();

    assertThat(shell.run("records", "check", "--folder", folder)).isZero();

    String hash = Files.readString(file(0)).split("\"hash\": \"")[1].substring(0, 16);
    assertThat(shell.out())
        .startsWith(
            """
            Soup Ladle
            ==========
            One record, with pages: nothing was changed, added or lost. The last is
            soup-ladle/1, its hash begins %s.
            """
                .formatted(hash));
  }

  @Test
  void a_record_that_was_changed_is_told_with_exit_code_1() throws IOException {
    Files.writeString(file(0), Files.readString(file(0)).replace("Ann Lee", "Eve Lee"));
    TestShell shell = TestShell.open();

    assertThat(shell.run("records", "check", "--folder", folder)).isEqualTo(1);

    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains(
            "* Record 1 (%s) was changed after it was saved: its content does not match its hash."
                .formatted(file(0).getFileName()));
    TestShell list = TestShell.open();
    list.run("records", "--folder", folder);
    assertThat(list.out()).contains("Changed after it was saved: do not rely on it.");
  }

  @Test
  void all_records_lost_is_told_as_long_as_the_list_is_there() throws IOException {
    Files.delete(file(0));
    TestShell shell = TestShell.open();
    assertThat(shell.run("records", "check", "--folder", folder)).isEqualTo(1);
    assertThat(shell.out()).contains("* Record 1 (").contains("is lost");
  }

  @Test
  void a_page_or_card_that_was_edited_or_deleted_is_told_with_exit_code_1() throws IOException {
    for (String ending : List.of(".txt", "-card.txt")) {
      Path page = Path.of(file(0).toString().replace(".json", ending));
      String text = Files.readString(page);
      Files.writeString(page, text.replace("Nothing found against it", "Nothing at all"));
      assertThat(check()).contains("* The page").contains("was changed after it was kept.");
      Files.delete(page);
      assertThat(check()).contains("* The page").contains("of record 1 is gone.");
      Files.writeString(page, text);
    }
  }

  private String check() {
    TestShell shell = TestShell.open();
    assertThat(shell.run("records", "check", "--folder", folder)).isEqualTo(1);
    return shell.out().replaceAll("\\s+", " ");
  }

  @Test
  void a_boat_whose_folder_is_gone_is_told_with_exit_code_1() throws IOException {
    String egg = temp.resolve("egg.json").toString();
    Files.writeString(Path.of(egg), SampleBoats.json().replace("Soup Ladle", "Egg Whisk"));
    TestShell.whoseInspection((b, r, d) -> GOOD).run("inspect", "--boat", egg, "--folder", folder);
    Files.move(Path.of(folder, "records", "egg-whisk"), temp.resolve("elsewhere"));
    assertThat(check())
        .contains("* The records of this boat are gone: the list of boats (boats.list) names");
    TestShell list = TestShell.open();
    list.run("records", "--folder", folder);
    assertThat(list.out()).contains("egg-whisk\n=========\n* The records of this boat are gone");
    TestShell fleet = TestShell.open();
    assertThat(fleet.run("fleet", "--csv", "--folder", folder)).isEqualTo(1);
    assertThat(fleet.out()).contains("\negg-whisk,,,,,,,\"The records of this boat are gone");
  }

  /** A message begins with a capital, and the name of a folder does not. */
  @Test
  void the_path_of_a_damaged_record_is_shown_whole_and_as_it_is() throws IOException {
    Files.writeString(file(0).resolveSibling("2026-06-02T120000-00000000.json"), "{");
    Path here = Path.of("").toAbsolutePath();
    Assumptions.assumeTrue(here.getRoot().equals(temp.getRoot()));
    TestShell shell = TestShell.open();
    shell.run("records", "--folder", here.relativize(Path.of(folder)).toString());
    assertThat(shell.out().replaceAll("\\s+", ""))
        .contains("*" + here + "/")
        .contains("/kept/records/soup-ladle/2026-06-02T120000-00000000.json:line1,column2:");
  }

  @Test
  void another_word_than_check_is_refused() {
    TestShell shell = TestShell.open();
    assertThat(shell.run("records", "chek", "--folder", folder)).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            "records: \"chek\" is not known here."
                + " Write \"records check\", or name a boat with --boat.\n");
  }

  @Test
  void the_page_of_a_correction_says_what_it_corrects() throws IOException {
    correct();
    TestShell page = TestShell.open();
    assertThat(page.run("page", "soup-ladle/2", "--folder", folder)).isZero();
    assertThat(page.out())
        .contains(
            """
            What this record corrects
            -------------------------
            It corrects record 1 (%s), because: the scales were set
            to pounds. The older record stays where it is.
            """
                .formatted(names().get(0)));
  }

  @Test
  void a_correction_names_both_the_record_and_the_reason() {
    String refusal =
        "inspect: --corrects and --because belong together."
            + " Name the older record and say what was wrong.\n";
    for (String[] half : List.of(words("--corrects", "1"), words("--because", "wrong"))) {
      TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);
      assertThat(shell.run(half)).isEqualTo(2);
      assertThat(shell.err()).isEqualTo(refusal);
    }
  }

  @Test
  void a_correction_of_a_record_that_is_not_there_is_refused_before_anything_is_kept()
      throws IOException {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);
    assertThat(shell.run(words("--corrects", "7", "--because", "wrong"))).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            Path.of(folder, "records")
                + ": there is no record \"7\" here. \"records\" lists what is.\n");
    assertThat(names()).hasSize(1);
  }

  @Test
  void a_record_outside_the_chain_cannot_be_corrected() throws IOException {
    Files.copy(file(0), file(0).resolveSibling("copied.json"));
    TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);
    assertThat(shell.run(words("--corrects", "copied", "--because", "wrong"))).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            "inspect: soup-ladle/copied is not part of the chain."
                + " Name one that \"records\" shows a number of.\n");
  }

  private String correct() {
    return inspect("--by", "Bob", "--corrects", "1", "--because", "the scales were set to pounds");
  }

  private String inspect(String... more) {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);
    assertThat(shell.run(words(more))).isZero();
    return shell.out();
  }

  private String[] words(String... more) {
    var words = new java.util.ArrayList<>(List.of("inspect", "--boat", boat, "--folder", folder));
    words.addAll(List.of(more));
    return words.toArray(String[]::new);
  }

  private Path file(int at) throws IOException {
    return Path.of(folder, "records", "soup-ladle", names().get(at) + ".json");
  }

  private List<String> names() throws IOException {
    try (var lines = Files.lines(Path.of(folder, "records", "soup-ladle", "chain.list"))) {
      return lines.skip(1).map(line -> line.split(" ")[1].replace(".json", "")).toList();
    }
  }
}
