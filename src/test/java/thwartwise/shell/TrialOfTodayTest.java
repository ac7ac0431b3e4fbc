package thwartwise.shell;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.ObservedTrial;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.measure.UnitSystem;

/** The trial in knee-deep water typed back on the morning it was done. */
class TrialOfTodayTest {
  private static final String ASKED = "Was the trial in knee-deep water done today?";
  private static final String NOTHING_AGAINST = "Nothing found against it today";

  @TempDir Path temp;
  private Path file;
  private final TestShell shell =
      TestShell.whoseInspection(
          (boat, rules, day) -> Inspection.withoutAdvice(boat, RuleSetFile.bundledRuleBook(), day));

  /** A pram with no chamber and nothing else that was shown to hold it up: a shell of aluminium. */
  @BeforeEach
  void keep_a_boat() {
    WalkSheet sheet = new WalkSheet();
    Boat pram = sheet.with("hull.material", "aluminium").with("hull.mass", "45").boat();
    file = new Workspace(temp).saveBoat(pram);
  }

  private int run(String... typed) {
    return shell.typing(typed).run("today", "--boat", file.toString(), "--folder", temp.toString());
  }

  private static String[] then(int yes, String... first) {
    return Stream.concat(Stream.of(first), Collections.nCopies(yes, "yes").stream())
        .toArray(String[]::new);
  }

  private Optional<ObservedTrial> seen() {
    return BoatFile.read(file).observedTrial();
  }

  @Test
  void enter_is_no_and_the_boat_stays_held() {
    assertThat(run("")).isEqualTo(1);
    assertThat(shell.out()).contains(ASKED, "Not today.").doesNotContain("1 of ");
    assertThat(seen()).isEmpty();
  }

  @Test
  void what_was_seen_lets_those_people_go_after_every_question() {
    assertThat(run(then(10, "yes", "1", "none", "80", "12 min", "yes", "yes", "Ann Lee"))).isZero();
    assertThat(shell.out().replaceAll("[\\s\u00a0]+", " "))
        .contains(
            ASKED,
            "when each got out first, and when each was left in it alone. In doubt: no. Level, off",
            "not worked out): with one person of 80 kg, on 1 June 2026, by Ann Lee.",
            "Working it out again, with what was seen.",
            "Do only those go who sat in it in today's trial, dressed as then",
            NOTHING_AGAINST);
    assertThat(seen())
        .contains(
            new ObservedTrial(
                LocalDate.of(2026, 6, 1), "Ann Lee", 1, 80, 12, true, true, List.of("thwart")));
  }

  @Test
  void enter_at_what_was_seen_is_that_it_went_badly_and_it_holds() {
    assertThat(run("yes", "1", "none", "80", "12 min", "", "", "Ann Lee")).isEqualTo(1);
    assertThat(shell.out().replaceAll("[\\s\u00a0]+", " "))
        .contains("all the time? no, it went badly ", "Not today.")
        .contains(
            "In the trial in knee-deep water on 2026-06-01, Ann Lee saw that full of water, with"
                + " one person in it, it did not float level and a head did not stay clear, so"
                + " nothing is recommended.");
    assertThat(seen().orElseThrow().failed()).isTrue();
  }

  @Test
  void other_units_asked_for_once_stay_out_of_the_file() {
    shell
        .typing("yes", "1", "none", "176 lb", "12 min", "yes", "yes", "Ann Lee")
        .run("today", "--boat", file.toString(), "--folder", temp.toString(), "--units", "feet");
    assertThat(seen().orElseThrow().mass()).isCloseTo(176 * 0.45359237, within(1e-9));
    assertThat(BoatFile.read(file).units()).isEqualTo(UnitSystem.METRIC);
  }

  /** Somebody else saves another hull while the questions of the trial are answered. */
  @Test
  void what_was_seen_never_goes_to_a_boat_file_changed_meanwhile() {
    Boat other = BoatFile.read(file).withHullMass(47);
    TestShell changing =
        TestShell.whoseInspection(
            (boat, rules, day) -> {
              new Workspace(temp).saveBoat(other);
              return Inspection.withoutAdvice(boat, RuleSetFile.bundledRuleBook(), day);
            });
    changing
        .typing(then(10, "yes", "1", "none", "80", "12 min", "yes", "yes", "Ann Lee"))
        .run("today", "--boat", file.toString(), "--folder", temp.toString());
    assertThat(changing.out())
        .contains(
            "The boat file was changed meanwhile, so what was seen stands in the record alone.");
    assertThat(BoatFile.read(file)).isEqualTo(other);
    assertThat(seen()).isEmpty();
  }

  @Test
  void whoever_leaves_before_all_is_told_has_told_nothing() {
    assertThat(run("yes", "1", "none", "80", TestShell.CTRL_C)).isEqualTo(1);
    assertThat(shell.out()).contains("Not today.").doesNotContain("Working it out again");
    assertThat(seen()).isEmpty();
  }
}
