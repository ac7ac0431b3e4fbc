package thwartwise.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;

class ToldTest {
  private static final Report REPORT = MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);
  private static final InspectionRecord INSPECTION = SampleRecords.of(SampleBoats.plain(), REPORT);

  private final StringWriter out = new StringWriter();

  private static Inspector.Kept kept(String... warnings) {
    return new Inspector.Kept(
        INSPECTION, "The page.\n", Path.of("kept", "r-1.json"), List.of(warnings));
  }

  private String printed() {
    return out.toString().replace("\r\n", "\n");
  }

  /** The page is shown all the same, and the exit code is that of the report. */
  @Test
  void a_list_that_could_not_be_written_is_a_note_under_the_page() {
    Told.page(
        reader -> kept("kept/chain.list: cannot be \u001bwritten."), new PrintWriter(out, true));

    assertThat(printed())
        .startsWith(
            "The page.\n\nNote: kept/chain.list: cannot be ?written.\nRecord: "
                + Path.of("kept", "r-1.json")
                + "\n");
    assertThat(Exit.of(REPORT)).isEqualTo(Exit.NOTHING_HOLDS_BACK);
  }

  @Test
  void the_page_stands_on_the_screen_before_anything_is_kept_and_once() {
    Told.page(
        reader -> {
          reader.accept("The page.\n");
          assertThat(printed()).isEqualTo("The page.\n\n");
          return kept();
        },
        new PrintWriter(out, true));

    assertThat(printed()).startsWith("The page.\n\nRecord: ").containsOnlyOnce("The page.");
  }

  @Test
  void the_papers_of_a_record_are_set_after_its_page_was_given_to_the_reader() {
    List<String> order = new ArrayList<>();
    Inspector inspector =
        new Inspector(
            (boat, rules, today, progress) -> REPORT,
            (inspection, number, corrects) -> {
              order.add("papers of " + number);
              return List.of();
            },
            TestShell.NOON,
            new ProgramVersion("9.9"));

    inspector.record(INSPECTION, page -> order.add("page")).papers().of("7", Optional.empty());

    assertThat(order).containsExactly("page", "papers of 7");
  }
}
