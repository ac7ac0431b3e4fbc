package thwartwise.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.record.InspectionRecord;
import thwartwise.report.CardPage;
import thwartwise.report.Screen;
import thwartwise.report.TextPage;

/** A borrowed boat of which no leak test is shown: what its papers say, and what a trial does. */
class BorrowedTrialTest {
  private static final Boat UNTESTED = Sheet.borrowed(true).with("short.tested", "no").boat();
  private static final InspectionRecord WITHOUT = inspected(UNTESTED);

  private static InspectionRecord inspected(Boat boat) {
    return new InspectionRecord(
        Sheet.TODAY.atTime(9, 0).atOffset(ZoneOffset.UTC),
        "the leader",
        "0.1.0",
        boat,
        Inspection.withoutAdvice(boat, RuleSetFile.shippedBook(), Sheet.TODAY));
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }

  private static String screen(InspectionRecord record) {
    List<String> lines = Screen.of(record, 21);
    assertThat(lines).hasSizeLessThanOrEqualTo(21);
    return bare(String.join("\n", lines));
  }

  @Test
  void without_a_trial_the_screen_says_what_it_carries_dry_and_names_the_trial_first() {
    assertThat(screen(WITHOUT))
        .startsWith(
            "Gravy Boat: launch held. Nobody and nothing goes aboard, as the boat stands."
                + " Dry: Two adults while it stays dry. That is no leave to go."
                + " Filled: Full of water it holds up nobody that was shown."
                + " Wrong: It sinks when full of water: 76 kg too heavy.")
        .contains(" First: 1. Try it ten minutes in knee-deep water, filled to the brim, those who")
        .contains(" Nobody: Nobody goes aboard. ");
  }

  @Test
  void the_card_and_the_glance_call_dry_figures_dry() {
    String dry =
        " It carries two adults while it stays dry, and nobody that was shown once it fills: that"
            + " is no leave to go. ";
    assertThat(bare(CardPage.text(WITHOUT, "7"))).contains("*** Launch held ").contains(dry);
    assertThat(bare(TextPage.of(WITHOUT))).contains("*** Launch held ").contains(dry);
  }

  @Test
  void the_sheet_of_changes_begins_with_the_trial_step_by_step() {
    assertThat(bare(TextPage.of(WITHOUT)))
        .contains(
            " What to change, and what nobody does ------------------------------------"
                + " First: the ten-minute trial in knee-deep water"
                + " ---------------------------------------------- No chamber of this boat was"
                + " shown to be tight, so nobody counts as held up when it is full of water.")
        .containsSubsequence(
            " 1. Go where the water is calm and warm",
            " 2. Weigh those who are to go",
            "no more than two adults, which is what it carries dry.",
            " 3. Lean together",
            " 4. Sit still while it is filled",
            " 5. Sit in it for ten minutes by the clock.",
            " every head stays clear of the water",
            " 6. Bail it out",
            " no chamber has taken water.",
            " 7. Was any of it not seen",
            " nobody goes.");
  }

  @Test
  void a_boat_with_a_chamber_that_counts_is_not_asked_for_the_trial() {
    InspectionRecord tested = inspected(Sheet.borrowed(true).boat());
    assertThat(bare(TextPage.of(tested))).doesNotContain("ten-minute trial");
    assertThat(screen(tested)).contains(" Dry: It stays up with two adults.");
  }
}
